import { fileURLToPath } from 'node:url';
import { openDiskHost } from '../host/diskHost.ts';
import { openDoor } from '../host/openDoor.ts';
import { findBrowser } from './findBrowser.ts';
import { type AppWindow, openAppWindow } from './openAppWindow.ts';
import { startServer } from './startServer.ts';

/**
 * The app without Electron: a loopback server and a window in an installed browser. Ends when the window does;
 * with no display, or no browser, it prints the address and ends at Ctrl-C.
 *
 * Arguments: the yard file to open, if any.
 */
const host = openDiskHost(process.argv[2] ?? null, process.env);
const door = openDoor(host.api, (error) => console.error(error));
let appWindow: AppWindow | null = null;
let isEnding = false;

const server = await startServer({
  door,
  pageRoot: fileURLToPath(new URL('../../dist/renderer', import.meta.url)),
  onPagesGone: () => {
    if (appWindow !== null) void end();
  },
});

async function end(): Promise<void> {
  if (isEnding) return;
  isEnding = true;
  appWindow?.close();
  await server.close();
  await appWindow?.ended;
  host.close();
  process.exit(0);
}

process.once('SIGINT', () => void end());
process.once('SIGTERM', () => void end());

function printAddress(why: string): void {
  console.log(`${why}; open this address in a browser on this machine (it works once, Ctrl-C ends):`);
  console.log(`  ${server.gate.firstAddress}`);
}

const hasDisplay =
  process.platform !== 'linux' || Boolean(process.env.DISPLAY) || Boolean(process.env.WAYLAND_DISPLAY);
const browser = findBrowser(process.env);

if (!hasDisplay) printAddress('There is no display here');
else if (browser === undefined) printAddress('No browser that can show an app window was found');
else {
  const isRoot = process.getuid?.() === 0;
  const note = isRoot ? ' without its sandbox, because this is the root account' : '';
  console.log(`The window opens in ${browser}${note}.`);
  appWindow = openAppWindow(browser, server.gate.firstAddress ?? server.gate.origin, isRoot);
  const code = await appWindow.ended;
  if (server.pages.hadAny || isEnding) await end();
  else {
    // It never showed the page: the person still gets to their yard.
    appWindow = null;
    printAddress(`The browser ended by itself (${code})`);
  }
}
