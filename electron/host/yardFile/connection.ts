import Database from 'better-sqlite3';
import { type Envelope, envelopeOf } from '../../../core/yardFile/index.ts';

/** How long a write waits for another program that is just reading or writing the file. */
const BUSY_TIMEOUT_MS = 2_000;

/**
 * Opens SQLite on a file that may be hostile. `trusted_schema` is off until the schema has been checked
 * (better-sqlite3 itself sets SQLITE_DBCONFIG_DEFENSIVE and leaves extension loading off); foreign keys are
 * off because a stranger's table could use them to block or widen our writes.
 *
 * A rollback journal and not WAL: between edits the yard is one file, whole, that can be copied, mailed and
 * opened by any program, even from a read-only folder; WAL would leave the newest edits in a second file
 * beside it. `synchronous = EXTRA` is FULL plus a sync of the folder after the journal is deleted, without
 * which a power cut just after an edit could bring the journal back and take the edit away.
 * Source: SQLite documentation, "PRAGMA synchronous" and "Atomic commit in SQLite", 3.54.
 */
export function connect(path: string, readOnly: boolean): Database.Database {
  const db = new Database(path, { readonly: readOnly, fileMustExist: true, timeout: BUSY_TIMEOUT_MS });
  try {
    db.pragma('trusted_schema = OFF');
    db.pragma('foreign_keys = OFF');
    db.pragma('cell_size_check = ON');
    db.pragma('ignore_check_constraints = ON'); // we have none; a stranger's could take all memory
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

/** Settings for writing; only once the schema is known to be ours. */
export function allowWriting(db: Database.Database): void {
  db.pragma('journal_mode = DELETE');
  db.pragma('synchronous = EXTRA');
  db.pragma('trusted_schema = ON'); // the spatial index's triggers call the functions below
  defineSpatialFunctions(db);
}

/** The functions that the standard's spatial index triggers call (OGC 12-128r17, annex F.3). */
function defineSpatialFunctions(db: Database.Database): void {
  const measure = (name: string, of: (envelope: Envelope) => number) => {
    db.function(name, { deterministic: true }, (geom: unknown) => {
      const envelope = geom instanceof Uint8Array ? envelopeOf(geom) : null;
      return envelope === null ? null : of(envelope);
    });
  };
  measure('ST_MinX', (envelope) => envelope.minX);
  measure('ST_MaxX', (envelope) => envelope.maxX);
  measure('ST_MinY', (envelope) => envelope.minY);
  measure('ST_MaxY', (envelope) => envelope.maxY);
  db.function('ST_IsEmpty', { deterministic: true }, (geom: unknown) =>
    geom instanceof Uint8Array ? (envelopeOf(geom) === null ? 1 : 0) : null,
  );
}

/** Runs `work` in one transaction; whatever it throws, nothing of it is on disk. */
export function inTransaction<T>(db: Database.Database, kind: 'read' | 'write', work: () => T): T {
  db.exec(kind === 'write' ? 'BEGIN IMMEDIATE' : 'BEGIN');
  try {
    const value = work();
    db.exec('COMMIT');
    return value;
  } finally {
    if (db.inTransaction) db.exec('ROLLBACK');
  }
}
