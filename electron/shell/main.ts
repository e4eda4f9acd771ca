import { fileURLToPath } from 'node:url';
import { openDiskHost } from '../host/diskHost.ts';
import { openDoor } from '../host/openDoor.ts';
import { runShell } from './runShell.ts';
import { yardArgument } from './yardArgument.ts';

// Bundled to dist/shell/main.mjs, beside the bundled preload; the page lies in dist/renderer.
const electron = await import('electron');
const startPath = yardArgument(process.argv, process.cwd());
const host = openDiskHost(startPath, process.env);

runShell(electron, {
  host,
  door: openDoor(host.api, (error) => console.error(error)),
  pageRoot: fileURLToPath(new URL('../renderer', import.meta.url)),
  preloadPath: fileURLToPath(new URL('./preload.cjs', import.meta.url)),
});
