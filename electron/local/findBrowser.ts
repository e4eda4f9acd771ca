import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Executables of browsers that can show a page as an app window (`--app`), in the order to try. */
const NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
  'brave-browser',
  'vivaldi',
];

/** Where systems keep them that do not put programs on the PATH. */
const MAC_PATHS = ['Chromium', 'Google Chrome', 'Microsoft Edge', 'Brave Browser'].map(
  (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
);
const WINDOWS_PATHS = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
  'BraveSoftware\\Brave-Browser\\Application\\brave.exe',
];
const WINDOWS_ROOTS = ['ProgramFiles', 'ProgramFiles(x86)', 'LOCALAPPDATA'];

/** An installed browser that can show an app window; undefined when there is none. */
export function findBrowser(
  environment: NodeJS.ProcessEnv,
  platform: NodeJS.Platform = process.platform,
): string | undefined {
  return candidates(environment, platform).find(isExecutable);
}

function candidates(environment: NodeJS.ProcessEnv, platform: NodeJS.Platform): readonly string[] {
  if (platform === 'darwin') return MAC_PATHS;
  if (platform === 'win32') {
    const roots = WINDOWS_ROOTS.flatMap((name) => environment[name] ?? []);
    return WINDOWS_PATHS.flatMap((path) => roots.map((root) => `${root}\\${path}`));
  }
  const folders = (environment.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
