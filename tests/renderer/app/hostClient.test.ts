import { expect, test } from 'vitest';
import { HOST_METHODS, type HostBridge } from '../../../electron/contract/channels.ts';
import { hostOver } from '../../../renderer/app/hostClient.ts';

function carrier(ask: HostBridge['ask']): HostBridge {
  return { ask, onOpenPath: (listener) => listener('/yards/a.gpkg') };
}

test('every method of the contract is forwarded by its name, and its answer handed back', async () => {
  const host = hostOver(carrier(async (method, argument) => ({ ok: true, value: { method, argument } })));
  for (const method of HOST_METHODS) {
    const call = host[method] as (argument: unknown) => Promise<unknown>;
    expect(await call({ a: 1 })).toEqual({ ok: true, value: { method, argument: { a: 1 } } }); // what was asked
  }
});

test('a host that does not answer is a problem, not a throw', async () => {
  const host = hostOver(carrier(() => Promise.reject(new Error('connection refused'))));
  const answer = await host.greet({});
  expect(answer).toEqual({ ok: false, problems: [{ kind: 'host/unreachable', where: {}, facts: {} }] }); // its kind
});

test('a path from outside is heard', () => {
  const heard: string[] = [];
  hostOver(carrier(async () => null)).onOpenPath((path) => heard.push(path));
  expect(heard).toEqual(['/yards/a.gpkg']); // the one this carrier names
});
