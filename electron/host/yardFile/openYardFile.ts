import { accessSync, constants, realpathSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import type Database from 'better-sqlite3';
import type { Problem } from '../../../core/problems.ts';
import { ok, type Result } from '../../../core/result.ts';
import { MIGRATIONS, type Migration, ROW_TABLES, type YardStore } from '../../../core/yardFile/index.ts';
import { checkPages, checkSchema, checkSizes, GPKG_APPLICATION_ID, readVersion } from './checkFile.ts';
import { allowWriting, connect, inTransaction } from './connection.ts';
import { GeoPackageYardStore } from './GeoPackageYardStore.ts';
import { migrate } from './migrate.ts';
import { takeOwnership } from './ownership.ts';
import { damaged, readable, Refusal, withTrouble } from './sqliteTrouble.ts';

export interface OpenOptions {
  /** Look without changing; also when another window has the yard open. */
  readonly readOnly?: boolean;
  /** The steps that lead to the newest version; others only in tests. */
  readonly migrations?: readonly Migration[];
}

/**
 * Opens a yard file. It is looked at read-only first: nothing is written to a file that is not a healthy yard
 * of a version we know. Only one opener may write; a second gets file/locked and may ask again for reading.
 *
 * Problems: file/not-found, file/not-a-yard, file/newer-version, file/damaged, file/locked, file/read-only,
 * file/unreadable, file/disk-full (an older version and no room for its safety copy).
 * Cost: reads the whole file once (SQLite's quick_check).
 */
export function openYardFile(givenPath: string, options: OpenOptions = {}): Result<YardStore> {
  const migrations = options.migrations ?? MIGRATIONS;
  return withTrouble(givenPath, () => {
    // One yard has one lock, by whatever link or relative path it is reached.
    const path = realpathSync(givenPath);
    if (!statSync(path).isFile()) throw new Refusal(notAYard(path, 'a folder'));
    if (statSync(path).size === 0) throw new Refusal(notAYard(path, 'an empty file'));
    if (options.readOnly === true) return ok(openForReading(path, migrations));
    return ok(openForWriting(path, migrations));
  });
}

function openForReading(path: string, migrations: readonly Migration[]): YardStore {
  const db = connectForReading(path);
  return closeOnThrow(db, () => {
    const version = checkWhole(db, path, migrations);
    if (version < migrations.length) throw plain('file/read-only', path);
    return new GeoPackageYardStore(db, path, null);
  });
}

function openForWriting(path: string, migrations: readonly Migration[]): YardStore {
  const look = connectForReading(path);
  const version = closeOnThrow(look, () => checkWhole(look, path, migrations));
  look.close();
  const ownership = takeOwnership(path);
  if (ownership === null) throw plain('file/locked', path);
  try {
    const db = connect(path, false);
    return closeOnThrow(db, () => {
      allowWriting(db);
      tryWriting(db, path);
      if (version < migrations.length) migrate(db, path, version, migrations);
      return new GeoPackageYardStore(db, path, ownership);
    });
  } catch (error) {
    ownership.release();
    throw error;
  }
}

/**
 * A file left by a process that died in the middle of an edit has its journal beside it, and SQLite must
 * first put the pages back, which a read-only connection may not do.
 */
function connectForReading(path: string): Database.Database {
  const db = connect(path, true);
  try {
    closeOnThrow(db, () => db.prepare('SELECT count(*) FROM sqlite_schema').get());
    return db;
  } catch (error) {
    if (!/^SQLITE_(READONLY_(ROLLBACK|RECOVERY)|CANTOPEN)/.test(String((error as { code?: unknown }).code))) {
      throw error;
    }
    const recovery = connect(path, false);
    closeOnThrow(recovery, () => recovery.prepare('SELECT count(*) FROM sqlite_schema').get());
    recovery.close();
    return connect(path, true);
  }
}

/** Everything that can be asked of a file without writing to it. @returns its version */
function checkWhole(db: Database.Database, path: string, migrations: readonly Migration[]): number {
  return inTransaction(db, 'read', () => {
    const version = askVersion(db, path);
    if (version > migrations.length) {
      const facts = { fileVersion: version, ourVersion: migrations.length };
      throw new Refusal({ kind: 'file/newer-version', where: { fileName: basename(path) }, facts });
    }
    const steps = migrations.slice(0, version);
    const wrong =
      checkPages(db, statSync(path).size) ?? checkSchema(db, steps) ?? checkSizes(db, ownTables());
    if (wrong !== null) throw new Refusal(damaged(path, wrong));
    return version;
  });
}

/** @returns the version; a Refusal says what the file is when it is no yard */
function askVersion(db: Database.Database, path: string): number {
  const reading = readVersion(db);
  if (reading !== null) return readable(path, reading);
  const isGeoPackage = db.pragma('application_id', { simple: true }) === GPKG_APPLICATION_ID;
  throw new Refusal(notAYard(path, isGeoPackage ? 'a GeoPackage of another program' : 'not a GeoPackage'));
}

/**
 * Tells at the door, and not at the first edit, that the file cannot be written: SQLite itself opens a
 * write-protected file for reading and says nothing. Writes nothing.
 */
function tryWriting(db: Database.Database, path: string): void {
  accessSync(path, constants.W_OK);
  inTransaction(db, 'write', () => {});
}

/** The tables whose values we read. */
function ownTables(): string[] {
  return [...ROW_TABLES.map((table) => table.name), 'images', 'edits', 'yard_version'];
}

function closeOnThrow<T>(db: Database.Database, work: () => T): T {
  try {
    return work();
  } catch (error) {
    db.close();
    throw error;
  }
}

function notAYard(path: string, found: string): Problem {
  return { kind: 'file/not-a-yard', where: { fileName: basename(path) }, facts: { found } };
}

function plain(kind: 'file/locked' | 'file/read-only', path: string): Refusal {
  return new Refusal({ kind, where: { fileName: basename(path) }, facts: {} });
}
