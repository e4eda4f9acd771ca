// npm start [-- yard.gpkg]: the app in Electron when there is one, else in a window of an installed browser.
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { ensureInstalled, ensurePage, ensureShell } from './ensure.mjs';
import { probeElectron } from './probeElectron.mjs';
import { become, giveUp, ownNode, ROOT, say } from './tools.mjs';

const [named] = process.argv.slice(2);
// npm runs scripts in the project's folder; the person named the file from their own.
const yard = named === undefined ? [] : [resolve(process.env.INIT_CWD ?? process.cwd(), named)];
if (yard[0] !== undefined && !existsSync(yard[0])) giveUp(`there is no file ${yard[0]}`);

ensureInstalled();
ensurePage();

const hasDisplay =
  process.platform !== 'linux' || Boolean(process.env.DISPLAY) || Boolean(process.env.WAYLAND_DISPLAY);
const electron = hasDisplay ? probeElectron() : { why: 'there is no display' };

if (electron.path !== undefined) {
  ensureShell();
  const isRoot = process.getuid?.() === 0;
  say(
    `using Electron: its binary is here${isRoot ? ' (without its sandbox, because this is the root account)' : ''}.`,
  );
  become(electron.path, [
    ...(isRoot ? ['--no-sandbox'] : []),
    join(ROOT, 'dist', 'shell', 'main.mjs'),
    ...yard,
  ]);
} else {
  say(`using the local window, not Electron: ${electron.why}.`);
  become(ownNode(), [join(ROOT, 'electron', 'local', 'main.ts'), ...yard]);
}
