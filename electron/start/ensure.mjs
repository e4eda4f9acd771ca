// Makes sure that what a start or a test needs is there: the packages, the built page, the built shell.
// Each says one line when it has something to do and nothing when it has not.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { digestOf, giveUp, ownNode, ROOT, run, runNode, say, withoutOwnNode } from './tools.mjs';

/** Installs the packages when they are missing or are not those of package-lock.json. */
export function ensureInstalled() {
  if (hasLockedPackages() && existsSync(ownNode())) return;
  say('installing packages (npm ci), under a minute …');
  // No package's script runs but that of `node`, which brings its binary: npm would else compile a database
  // that comes ready-made.
  const quiet = ['--no-audit', '--no-fund', '--loglevel=error'];
  if (run('npm', ['ci', '--ignore-scripts', ...quiet], withoutOwnNode()) !== 0) {
    giveUp('npm ci failed; the packages could not be fetched. See its words above.');
  }
  if (!existsSync(ownNode()) && run('npm', ['rebuild', 'node', ...quiet], withoutOwnNode()) !== 0) {
    giveUp('the package "node" could not fetch its binary. See npm’s words above.');
  }
  if (!existsSync(ownNode()))
    giveUp(`npm finished, but ${ownNode()} is missing: is this machine’s kind supported?`);
}

/** npm keeps a list of what it installed; every package of the lock must be in it, at its version. */
function hasLockedPackages() {
  const installedList = join(ROOT, 'node_modules', '.package-lock.json');
  if (!existsSync(installedList)) return false;
  const installed = JSON.parse(readFileSync(installedList, 'utf8')).packages;
  const locked = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')).packages;
  return Object.entries(locked).every(([path, { version, optional }]) => {
    if (path === '') return true;
    return installed[path] === undefined ? optional === true : installed[path].version === version;
  });
}

/** Builds dist/renderer when its sources have changed since. */
export function ensurePage() {
  const sources = ['renderer', 'core', 'electron/contract', 'package-lock.json'];
  buildOnce('renderer/index.html', sources, 'the page', () =>
    runNode(['node_modules/vite/bin/vite.js', 'build', 'renderer', '--logLevel', 'warn']),
  );
}

/** Builds dist/shell (the Electron main and preload) when its sources have changed since. */
export function ensureShell() {
  const sources = ['electron', 'core', 'package-lock.json'];
  buildOnce('shell/main.mjs', sources, 'the Electron shell', () =>
    runNode(['electron/start/buildShell.mjs']),
  );
}

function buildOnce(product, sources, called, build) {
  const stamp = join(ROOT, 'dist', `${product.split('/')[0]}.stamp`);
  const digest = digestOf(...sources);
  const isBuilt = existsSync(join(ROOT, 'dist', product)) && existsSync(stamp);
  if (isBuilt && readFileSync(stamp, 'utf8') === digest) return;
  say(`building ${called} …`);
  if (build() !== 0) giveUp(`building ${called} failed; the reason stands above.`);
  mkdirSync(join(ROOT, 'dist'), { recursive: true });
  writeFileSync(stamp, digest);
}
