import { closeSync, openSync, rmSync, statSync } from 'node:fs';
import Database from 'better-sqlite3';

/** Held while a yard is open for writing. */
export interface Ownership {
  release(): void;
}

/** Attempts before a lock file that vanishes again and again is called locked. */
const ATTEMPTS = 5;

/**
 * Makes this process the one writer of a yard, or answers null when another one is. The mark is a lock of
 * the operating system (taken through SQLite) on an empty file beside the yard, `<yard>.gpkg-open`: it ends
 * with the process however that ends, so a file left behind by a crash locks nobody out. The yard file itself
 * stays free to be read by a second window or a GIS.
 * Throws what the disk throws (EROFS, EACCES, ENOSPC ...).
 */
export function takeOwnership(yardPath: string): Ownership | null {
  const path = `${yardPath}-open`;
  for (let attempt = 0; attempt < ATTEMPTS; attempt += 1) {
    createIfMissing(path);
    const inode = inodeOf(path);
    const db = new Database(path, { timeout: 0 });
    try {
      db.exec('BEGIN EXCLUSIVE');
    } catch (error) {
      db.close();
      if ((error as { code?: unknown }).code === 'SQLITE_BUSY') return null;
      throw error;
    }
    // The owner before us may have removed the file between our opening and locking it: a lock on a file
    // that has lost its name keeps nobody out.
    if (inode !== null && inode === inodeOf(path)) return { release: () => release(db, path) };
    db.close();
  }
  return null;
}

/** Never opens a file that exists: closing it would drop the locks this very process holds on it (POSIX). */
function createIfMissing(path: string): void {
  try {
    closeSync(openSync(path, 'wx'));
  } catch (error) {
    if ((error as { code?: unknown }).code !== 'EEXIST') throw error;
  }
}

function inodeOf(path: string): bigint | null {
  return statSync(path, { bigint: true, throwIfNoEntry: false })?.ino ?? null;
}

/** Removed while still locked where the system allows it, after closing where it does not (Windows). */
function release(db: Database.Database, path: string): void {
  if (!db.open) return;
  const removed = tryRemove(path);
  db.close();
  if (!removed) tryRemove(path);
}

function tryRemove(path: string): boolean {
  try {
    rmSync(path);
    return true;
  } catch {
    return false; // a second opener has it in its hands just now, or it is gone: either way nothing is lost
  }
}
