import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from '@playwright/test';
import { findBrowser } from '../../../electron/local/findBrowser.ts';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const BROWSER = findBrowser(process.env);
/** The host says its address within this, in milliseconds, on a busy two-core machine. */
const START_LIMIT_MS = 20_000;

/** The app as a person has it: the real host on a real folder, and a real browser window on it. */
export interface RunningApp {
  readonly page: Page;
  readonly yardsFolder: string;
  /** What the window complained about so far: console errors and uncaught faults. */
  readonly complaints: string[];
  /** Ends the host at once, as a power cut would. */
  killHost(): Promise<void>;
  /** Starts a new host on the same folder and looks at it in the same window. */
  restart(path?: string): Promise<void>;
  close(): Promise<void>;
}

export interface StartWishes {
  readonly widthPx?: number;
  readonly heightPx?: number;
  readonly lamp?: 'light' | 'dark';
}

export async function startApp(wishes: StartWishes = {}): Promise<RunningApp> {
  const yardsFolder = mkdtempSync(join(tmpdir(), 'platpace-yards-'));
  const browser: Browser = await chromium.launch({
    ...(BROWSER === undefined ? {} : { executablePath: BROWSER }),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
  });
  const page = await browser.newPage({
    viewport: { width: wishes.widthPx ?? 1280, height: wishes.heightPx ?? 800 },
    colorScheme: wishes.lamp ?? 'light',
    acceptDownloads: true,
  });
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  let host = await startHost(yardsFolder, null);
  await show(page, host.address);
  return {
    page,
    yardsFolder,
    complaints,
    killHost: () => end(host.process, 'SIGKILL'),
    restart: async (path) => {
      // A window left open would rightly complain that its host is gone.
      await page.goto('about:blank');
      await end(host.process, 'SIGKILL');
      host = await startHost(yardsFolder, path ?? null);
      await show(page, host.address);
    },
    close: async () => {
      await browser.close();
      await end(host.process, 'SIGTERM');
      rmSync(yardsFolder, { recursive: true, force: true });
    },
  };
}

/** The window on the host, with its first yard open. */
async function show(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByText('all saved').waitFor({ timeout: START_LIMIT_MS });
}

async function startHost(yardsFolder: string, path: string | null) {
  const main = join(ROOT, 'electron/local/main.ts');
  const env = { ...process.env, PLATPACE_YARDS: yardsFolder, DISPLAY: '', WAYLAND_DISPLAY: '' };
  const child = spawn(process.execPath, path === null ? [main] : [main, path], { env, cwd: ROOT });
  const address = await new Promise<string>((resolve, reject) => {
    let said = '';
    const late = setTimeout(() => reject(new Error(`the host gave no address: ${said}`)), START_LIMIT_MS);
    child.stderr.on('data', (chunk) => {
      said += chunk;
    });
    child.stdout.on('data', (chunk) => {
      said += chunk;
      const found = /http:\/\/\S+/.exec(said)?.[0];
      if (found === undefined) return;
      clearTimeout(late);
      resolve(found);
    });
  });
  return { process: child, address };
}

function end(child: ChildProcessWithoutNullStreams, signal: NodeJS.Signals): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill(signal);
  });
}
