import { type Result, trouble } from '../../core/result.ts';
import { isHostMethod } from '../contract/channels.ts';
import { guard } from '../contract/guards.ts';
import type { HostApi } from '../contract/HostApi.ts';

/** Asks a host method by name with an argument from an untrusted window. Never throws. */
export type Door = (method: string, argument: unknown) => Promise<Result<unknown>>;

/**
 * The host's top level, the same for both carriers: the name and the argument are checked, and a Defect ends
 * here as a problem, so that one broken call does not take the others' unsaved work with it.
 *
 * @param report told of every Defect, with its stack; the window gets its message only
 */
export function openDoor(host: HostApi, report: (error: unknown) => void): Door {
  return async (method, argument) => {
    if (!isHostMethod(method)) {
      const detail = `there is no ${method.slice(0, 40)}`;
      return trouble({ kind: 'host/bad-request', where: {}, facts: { detail } });
    }
    try {
      const checked = guard(method, argument);
      if (!checked.ok) return checked;
      const handler = host[method] as (ask: unknown) => Promise<Result<unknown>>;
      return await handler(checked.value);
    } catch (error) {
      report(error);
      const detail = error instanceof Error ? error.message : 'an unnamed fault';
      return trouble({ kind: 'host/defect', where: {}, facts: { detail } });
    }
  };
}
