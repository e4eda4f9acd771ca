import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';

/**
 * Nothing the browser does of its own accord may leave the machine: no updates, reports, look-ups or sync, and
 * whatever is not for this machine goes to a proxy that is not there (port 9, discard).
 */
const QUIET_FLAGS = [
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-default-apps',
  '--disable-extensions',
  '--disable-domain-reliability',
  '--disable-client-side-phishing-detection',
  '--disable-breakpad',
  '--disable-quic',
  '--no-pings',
  '--no-service-autorun',
  '--password-store=basic',
  '--use-mock-keychain',
  '--disable-features=Translate,OptimizationHints,MediaRouter,AutofillServerCommunication,CertificateTransparencyComponentUpdater',
  '--proxy-server=http://127.0.0.1:9',
];

export interface AppWindow {
  /** Resolves with the browser's exit code when the window is closed; null when it was ended by a signal. */
  readonly ended: Promise<number | null>;
  close(): void;
}

export function windowArguments(address: string, profile: string, isRoot: boolean): readonly string[] {
  const sandbox = isRoot ? ['--no-sandbox'] : [];
  return [
    `--app=${address}`,
    `--user-data-dir=${profile}`,
    '--window-size=1440,920',
    ...QUIET_FLAGS,
    ...sandbox,
  ];
}

/**
 * Opens a window of its own in an installed browser. The profile is new for every window, so that the browser
 * neither hands the window to one that is running nor brings the person's extensions; it is removed at the end.
 */
export function openAppWindow(browser: string, address: string, isRoot: boolean): AppWindow {
  const cache = cacheFolder(process.env, process.platform);
  mkdirSync(cache, { recursive: true });
  const profile = mkdtempSync(join(cache, 'window-'));
  const child = spawn(browser, windowArguments(address, profile, isRoot), { stdio: 'ignore' });
  return { ended: endOf(child, profile), close: () => child.kill() };
}

async function endOf(child: ChildProcess, profile: string): Promise<number | null> {
  const code = await new Promise<number | null>((resolve) => {
    child.once('error', () => resolve(1));
    child.once('exit', resolve);
  });
  try {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  } catch {
    return code; // the browser's last helpers still write to it; it is a cache and holds nothing of the yard
  }
  return code;
}

export function cacheFolder(environment: NodeJS.ProcessEnv, platform: NodeJS.Platform): string {
  if (platform === 'darwin') return join(homedir(), 'Library', 'Caches', 'platpace');
  if (platform === 'win32') return join(environment.LOCALAPPDATA ?? homedir(), 'platpace', 'cache');
  return join(environment.XDG_CACHE_HOME || join(homedir(), '.cache'), 'platpace');
}
