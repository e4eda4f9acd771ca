import { execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { takeOwnership } from '../../../../electron/host/yardFile/ownership.ts';

const OWNERSHIP = pathToFileURL(
  join(import.meta.dirname, '../../../../electron/host/yardFile/ownership.ts'),
).href;

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'platpace-'));
  path = join(folder, 'garden.gpkg');
});
afterEach(() => rmSync(folder, { recursive: true }));

/** What another process gets when it asks for the yard. */
function otherProcessGets(): string {
  const code = `import { takeOwnership } from '${OWNERSHIP}';
    const mine = takeOwnership(process.argv[1]); console.log(mine === null ? 'nothing' : 'it'); mine?.release();`;
  return execFileSync(process.execPath, ['--input-type=module', '-e', code, path], {
    encoding: 'utf8',
  }).trim();
}

test('a yard has one owner at a time, in this process and in others', () => {
  const first = takeOwnership(path);
  expect(first).not.toBeNull();
  expect(takeOwnership(path)).toBeNull();
  expect(otherProcessGets()).toBe('nothing');
  // Asking and being refused must not have loosened the lock (closing a file drops POSIX locks on it).
  expect(otherProcessGets()).toBe('nothing');
  first?.release();
  expect(otherProcessGets()).toBe('it');
});

test('giving it back twice does not take it from the next owner', () => {
  const first = takeOwnership(path);
  first?.release();
  const second = takeOwnership(path);
  first?.release();
  expect(otherProcessGets()).toBe('nothing');
  second?.release();
});

test('nothing is left beside the yard afterwards', () => {
  takeOwnership(path)?.release();
  expect(existsSync(`${path}-open`)).toBe(false);
});

test('a mark left by a crash keeps nobody out', () => {
  writeFileSync(`${path}-open`, '');
  const owner = takeOwnership(path);
  expect(owner).not.toBeNull();
  owner?.release();
});

test('two yards do not get in each other’s way', () => {
  const [one, two] = [takeOwnership(path), takeOwnership(join(folder, 'other.gpkg'))];
  expect(two).not.toBeNull();
  one?.release();
  two?.release();
});

test('the owner killed, the yard is free at once', async () => {
  const code = `import { takeOwnership } from '${OWNERSHIP}';
    const mine = takeOwnership(process.argv[1]); if (mine) console.log('it'); setInterval(() => mine, 1000);`;
  const owner = spawn(process.execPath, ['--input-type=module', '-e', code, path]);
  await new Promise((resolve) => owner.stdout.once('data', resolve));
  expect(takeOwnership(path)).toBeNull();
  const ended = new Promise((resolve) => owner.once('close', resolve));
  owner.kill('SIGKILL');
  await ended;
  const next = takeOwnership(path);
  expect(next).not.toBeNull();
  next?.release();
});
