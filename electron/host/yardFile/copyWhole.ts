import { randomBytes } from 'node:crypto';
import { closeSync, existsSync, fsyncSync, linkSync, openSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type Database from 'better-sqlite3';

/** A whole copy of an open file under a new path, as it is between two edits. Throws EEXIST and what SQLite throws. */
export function copyWhole(db: Database.Database, path: string): void {
  putInPlace(path, (temporary) => {
    db.prepare('VACUUM INTO ?').run(temporary);
  });
}

/**
 * Makes a file under a temporary name beside `path` and gives it its name only when it is whole and on the
 * disk. Never overwrites (throws EEXIST). Whatever happens, the temporary name is gone afterwards.
 */
export function putInPlace(path: string, make: (temporary: string) => void): void {
  if (existsSync(path)) throw exists(path);
  const temporary = join(dirname(path), `.${basename(path)}-${randomBytes(6).toString('hex')}`);
  // Made by us, empty: so that a folder nobody may write to says so itself and not as an error of SQLite.
  closeSync(openSync(temporary, 'wx'));
  try {
    make(temporary);
    sync(temporary);
    giveName(temporary, path);
  } finally {
    rmSync(temporary, { force: true });
    rmSync(`${temporary}-journal`, { force: true });
  }
  syncFolder(dirname(path));
}

/** A hard link, unlike a rename, refuses a name that is taken; where there are none (FAT) we look first. */
function giveName(temporary: string, path: string): void {
  try {
    linkSync(temporary, path);
  } catch (error) {
    const code = (error as { code?: unknown }).code;
    if (code === 'EEXIST' || existsSync(path)) throw exists(path);
    if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'ENOSYS' && code !== 'EOPNOTSUPP') throw error;
    renameSync(temporary, path);
  }
}

function exists(path: string): Error {
  return Object.assign(new Error(`${path} is there already`), { code: 'EEXIST' });
}

function sync(path: string): void {
  const file = openSync(path, 'r+');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** So that the new name survives a power cut. Windows cannot open a folder, and needs no such thing. */
function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
