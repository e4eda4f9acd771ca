import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { BRIDGE_NAME, type HostBridge, OPEN_PATH_CHANNEL } from '../../../electron/contract/channels.ts';
import type { HostMethod } from '../../../electron/contract/HostApi.ts';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'platpace-bundle-'));
  const built = spawnSync(process.execPath, [join(ROOT, 'electron', 'start', 'buildShell.mjs'), folder], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  if (built.status !== 0) throw new Error(built.stderr);
}, 60_000);

afterAll(() => rmSync(folder, { recursive: true }));

/** Runs the bundled preload as a sandboxed window does: it may ask for 'electron' and has nothing else. */
function runPreload() {
  const exposed = new Map<string, HostBridge>();
  const invoked: unknown[] = [];
  const listeners = new Map<string, (event: unknown, value: unknown) => void>();
  const required: string[] = [];
  const require = (name: string) => {
    required.push(name);
    return {
      contextBridge: { exposeInMainWorld: (key: string, value: HostBridge) => exposed.set(key, value) },
      ipcRenderer: {
        invoke: async (...args: unknown[]) => invoked.push(args),
        on: (channel: string, listener: (event: unknown, value: unknown) => void) =>
          listeners.set(channel, listener),
      },
    };
  };
  runInNewContext(readFileSync(join(folder, 'preload.cjs'), 'utf8'), { require, module: {}, exports: {} });
  const bridge = exposed.get(BRIDGE_NAME);
  if (bridge === undefined) throw new Error('the preload put no bridge in the window');
  return { bridge, exposed, invoked, listeners, required };
}

describe('the bundled preload', () => {
  test('is one file that needs Electron and nothing else', () => {
    expect(new Set(runPreload().required)).toEqual(new Set(['electron'])); // all a sandboxed preload has
  });

  test('puts the bridge in the window and no other thing', () => {
    const { exposed, bridge } = runPreload();
    expect([...exposed.keys()]).toEqual([BRIDGE_NAME]); // the contract's name for it
    expect(Object.keys(bridge).sort()).toEqual(['ask', 'onOpenPath']); // the members of HostBridge
  });

  test('forwards a question on the channel of its method', async () => {
    const { bridge, invoked } = runPreload();
    await bridge.ask('openYard', { path: 'a' });
    expect(invoked).toEqual([['platpace:openYard', { path: 'a' }]]); // as asked
  });

  test('lets the page name no other channel', async () => {
    const { bridge, invoked } = runPreload();
    for (const name of ['constructor', '__proto__', 'open-path', '']) {
      // From the bundle's own realm, so not this realm's Error.
      await expect(bridge.ask(name as HostMethod, {})).rejects.toMatchObject({ message: 'no such method' });
    }
    expect(invoked).toEqual([]); // nothing went through
  });

  test('hands on the path that is to be opened, and not the event it came by', () => {
    const { bridge, listeners } = runPreload();
    const heard: unknown[][] = [];
    bridge.onOpenPath((...args) => heard.push(args));
    listeners.get(OPEN_PATH_CHANNEL)?.({ sender: 'secret' }, '/yards/a.gpkg');
    expect(heard).toEqual([['/yards/a.gpkg']]); // the path alone
  });
});

describe('the bundled main', () => {
  test('starts its threads from files that lie beside it', () => {
    const files = readdirSync(folder);
    const code = readFileSync(join(folder, 'main.mjs'), 'utf8');
    const threads = [...code.matchAll(/new URL\("\.\/(\w+Thread\.\w+)", import\.meta\.url\)/g)];
    expect(threads.length).toBeGreaterThan(0);
    for (const [, name] of threads) expect(files).toContain(name);
  });
});
