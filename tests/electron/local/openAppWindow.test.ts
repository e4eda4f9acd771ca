import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { findBrowser } from '../../../electron/local/findBrowser.ts';
import { cacheFolder, windowArguments } from '../../../electron/local/openAppWindow.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'platpace-browser-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function install(name: string, mode: number): string {
  const path = join(folder, name);
  writeFileSync(path, '#!/bin/sh\n');
  chmodSync(path, mode);
  return path;
}

test('a browser is found by its name on the path, the first of the list before others', () => {
  expect(findBrowser({ PATH: folder }, 'linux')).toBeUndefined();
  const edge = install('microsoft-edge', 0o755);
  expect(findBrowser({ PATH: `/nowhere:${folder}` }, 'linux')).toBe(edge);
  const chromium = install('chromium', 0o755);
  expect(findBrowser({ PATH: folder }, 'linux')).toBe(chromium);
});

test('what cannot be run is no browser', () => {
  install('chromium', 0o644);
  mkdirSync(join(folder, 'google-chrome'));
  expect(findBrowser({ PATH: folder }, 'linux')).toBeUndefined();
  expect(findBrowser({}, 'linux')).toBeUndefined();
});

test('the window is an app window of its own that reaches no other machine', () => {
  const args = windowArguments('http://127.0.0.1:1/?key=k', '/cache/w', false);
  expect(args).toContain('--app=http://127.0.0.1:1/?key=k');
  expect(args).toContain('--user-data-dir=/cache/w');
  expect(args).toContain('--disable-background-networking');
  expect(args).toContain('--proxy-server=http://127.0.0.1:9');
});

test('the sandbox is given up for the root account only', () => {
  expect(windowArguments('a', 'b', false)).not.toContain('--no-sandbox');
  expect(windowArguments('a', 'b', true)).toContain('--no-sandbox');
});

test('the profile lies in the person’s cache', () => {
  expect(cacheFolder({ XDG_CACHE_HOME: '/c' }, 'linux')).toBe(join('/c', 'platpace')); // XDG base directories
  expect(cacheFolder({ LOCALAPPDATA: '/l' }, 'win32')).toContain('platpace');
});
