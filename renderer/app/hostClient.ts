import type { Result } from '../../core/result.ts';
import { HOST_METHODS, type HostBridge } from '../../electron/contract/channels.ts';
import type { HostApi, HostMethod } from '../../electron/contract/HostApi.ts';
import { takeCarrier } from './carrier.ts';

export type Host = HostApi & Pick<HostBridge, 'onOpenPath'>;

/** The host as the window calls it, over whichever carrier there is. */
export function connectHost(): Host {
  return hostOver(takeCarrier());
}

/** Every method of the contract, forwarded. A carrier that fails is a problem like any other, never a throw. */
export function hostOver(carrier: HostBridge): Host {
  const methods = HOST_METHODS.map((method) => [
    method,
    (argument: unknown) => ask(carrier, method, argument),
  ]);
  return {
    ...(Object.fromEntries(methods) as HostApi),
    onOpenPath: (listener) => carrier.onOpenPath(listener),
  };
}

async function ask(carrier: HostBridge, method: HostMethod, argument: unknown): Promise<Result<unknown>> {
  try {
    return (await carrier.ask(method, argument)) as Result<unknown>;
  } catch {
    return { ok: false, problems: [{ kind: 'host/unreachable', where: {}, facts: {} }] };
  }
}
