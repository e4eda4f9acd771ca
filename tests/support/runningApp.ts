import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface RunningApp {
  /** Works once. */
  readonly address: string;
  /** A new, empty place for yards: the app begins with its sample. */
  readonly yardsFolder: string;
  /** Ends the app and removes its yards. */
  stop(): Promise<void>;
}

/** The built app as `npm start` runs it without a display; dist/renderer must be there. */
export async function startApp(...args: readonly string[]): Promise<RunningApp> {
  const folder = mkdtempSync(join(tmpdir(), 'platpace-app-'));
  const yardsFolder = join(folder, 'Yards');
  const child = spawn(process.execPath, [join(ROOT, 'electron', 'local', 'main.ts'), ...args], {
    env: { ...process.env, PLATPACE_YARDS: yardsFolder, DISPLAY: '', WAYLAND_DISPLAY: '' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const address = await addressPrintedBy(child);
  return {
    address,
    yardsFolder,
    async stop() {
      child.kill();
      await ended;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function addressPrintedBy(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = '';
    child.stdout?.on('data', (chunk: Buffer) => {
      printed += chunk.toString();
      const address = /http:\/\/127\.0\.0\.1:\d+\/\?key=[\w-]+/.exec(printed)?.[0];
      if (address !== undefined) resolve(address);
    });
    child.once('exit', (code) => reject(new Error(`the app ended (${code}) and printed: ${printed}`)));
  });
}
