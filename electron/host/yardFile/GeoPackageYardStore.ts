import { createHash } from 'node:crypto';
import { basename } from 'node:path';
import type Database from 'better-sqlite3';
import { type Change, type Edit, YARD_PARTS } from '../../../core/edits/index.ts';
import { ok, type Result, type Trouble, trouble } from '../../../core/result.ts';
import type { Yard } from '../../../core/yard.ts';
import {
  checkEdit,
  type EditHistory,
  type HistoryStep,
  type NewImage,
  outlineTable,
  sameData,
  srsIdOf,
  type StoredImage,
  tablesOf,
  type YardStore,
} from '../../../core/yardFile/index.ts';
import { checkSchema } from './checkFile.ts';
import { copyWhole } from './copyWhole.ts';
import { inTransaction } from './connection.ts';
import { writeAreas, writeContents, writeFrame } from './derivedColumns.ts';
import { EditLog } from './EditLog.ts';
import type { Ownership } from './ownership.ts';
import { damaged, Refusal, withTrouble } from './sqliteTrouble.ts';
import { YardTables } from './YardTables.ts';

/** One yard file, open. Every call is one SQLite transaction, synchronous from first to last. */
export class GeoPackageYardStore implements YardStore {
  readonly readOnly: boolean;
  readonly #db: Database.Database;
  readonly #path: string;
  readonly #ownership: Ownership | null;
  readonly #tables: YardTables;
  readonly #log: EditLog;
  #schemaVersion: unknown;

  /** @param ownership held for writing and given back on close; null = read only */
  constructor(db: Database.Database, path: string, ownership: Ownership | null) {
    this.#db = db;
    this.#path = path;
    this.#ownership = ownership;
    this.readOnly = ownership === null;
    this.#tables = new YardTables(db, path);
    this.#log = new EditLog(db, path);
    this.#schemaVersion = schemaVersionOf(db);
  }

  readYard(): Result<Yard> {
    return this.#run('read', () => {
      const details = this.#tables.readRows('details');
      const [only, another] = details;
      if (only === undefined || another !== undefined) {
        throw new Refusal(damaged(this.#path, 'yard_details does not hold one row'));
      }
      return {
        details: only,
        pictures: this.#tables.readRows('pictures'),
        outlines: this.#tables.readRows('outlines'),
        marks: this.#tables.readRows('marks'),
        elevations: this.#tables.readRows('elevations'),
        checks: this.#tables.readRows('checks'),
        products: this.#tables.readRows('products'),
        applicators: this.#tables.readRows('applicators'),
        jobs: this.#tables.readRows('jobs'),
      };
    });
  }

  #writeAreas(): void {
    const [details] = this.#tables.readRows('details');
    const outlines = this.#tables.readRows('outlines');
    // Pictures say how sure an area is, and elevations how steep: neither moves an edge.
    if (details !== undefined) writeAreas(this.#db, { details, outlines, pictures: [], elevations: [] });
  }

  applyEdit(edit: Edit, images: readonly NewImage[]): Result<EditHistory> {
    const wrong = checkEdit(edit) ?? checkImages(images);
    if (wrong !== null) return badRequest(wrong);
    return this.#run('write', () => {
      this.#refuseStrangeSchema();
      this.#write(edit.changes);
      writeImages(this.#db, images);
      this.#log.record(edit);
      return this.#log.history();
    });
  }

  undo(): Result<HistoryStep> {
    return this.#takeStep(() => this.#log.nextUndo());
  }

  redo(): Result<HistoryStep> {
    return this.#takeStep(() => this.#log.nextRedo());
  }

  history(): Result<EditHistory> {
    return this.#run('read', () => this.#log.history());
  }

  readImage(imageHash: string): Result<StoredImage> {
    return this.#run('read', () => {
      const row = this.#db
        .prepare<[string], { media_type: unknown; bytes: unknown }>(
          'SELECT media_type, bytes FROM images WHERE image_hash = ?',
        )
        .get(imageHash);
      const fail = (what: string) => new Refusal(damaged(this.#path, `the image ${imageHash} ${what}`));
      if (row === undefined) throw fail('is missing');
      if (!(row.bytes instanceof Uint8Array) || typeof row.media_type !== 'string') throw fail('is no image');
      if (sha256(row.bytes) !== imageHash) throw fail('has changed');
      return { mediaType: row.media_type, bytes: new Uint8Array(row.bytes) };
    });
  }

  saveCopy(path: string): Result<null> {
    return withTrouble(path, () => {
      copyWhole(this.#db, path);
      return ok(null);
    });
  }

  close(): void {
    this.#db.close();
    this.#ownership?.release();
  }

  #takeStep(next: () => { readonly step: Edit; take(): void } | null): Result<HistoryStep> {
    return this.#run('write', () => {
      this.#refuseStrangeSchema();
      const taken = next();
      if (taken !== null) {
        this.#write(taken.step.changes);
        taken.take();
      }
      return { step: taken?.step ?? null, history: this.#log.history() };
    });
  }

  /** Another program may have added a trigger since the file was opened; it would run on our edits. */
  #refuseStrangeSchema(): void {
    const version = schemaVersionOf(this.#db);
    if (version === this.#schemaVersion) return;
    const wrong = checkSchema(this.#db);
    if (wrong !== null) throw new Refusal(damaged(this.#path, wrong));
    this.#schemaVersion = version;
  }

  /** Writes the rows an edit names, each only if it is what the edit says it was, and what follows from them. */
  #write(changes: readonly Change[]): void {
    const touched = new Set<string>();
    for (const change of changes) {
      for (const table of this.#writeChange(change)) touched.add(table);
    }
    const parts = new Set(changes.map((change) => change.part));
    if (parts.has('details')) {
      const details = this.#tables.findRow('details', 'yard');
      if (details !== null) writeFrame(this.#db, details.row.frame);
    }
    if (parts.has('outlines') || parts.has('details')) this.#writeAreas();
    writeContents(this.#db, touched);
  }

  /** @returns names of the tables written */
  #writeChange(change: Change): string[] {
    const { part, id, index, before, after } = change;
    const stored = this.#tables.findRow(part, id);
    if (!sameData(stored?.row ?? null, before))
      throw new Refusal({ kind: 'host/stale-edit', where: {}, facts: {} });
    const details = this.#tables.findRow('details', 'yard');
    if (details === null) throw new Refusal(damaged(this.#path, 'yard_details does not hold one row'));
    const srsId = srsIdOf(details.row.frame);
    if (after === null) {
      if (stored !== null) this.#tables.deleteRow(stored.place);
    } else if (stored === null) this.#tables.insertRow(part, after, index, srsId);
    else this.#tables.updateRow(part, after, stored.place, srsId);
    return part === 'outlines'
      ? [before, after].flatMap((row) =>
          row === null ? [] : [outlineTable((row as Yard['outlines'][0]).kind)],
        )
      : tablesOf(part).map((table) => table.name);
  }

  #run<T>(kind: 'read' | 'write', work: () => T): Result<T> {
    if (kind === 'write' && this.readOnly) {
      return trouble({ kind: 'file/read-only', where: { fileName: basename(this.#path) }, facts: {} });
    }
    return withTrouble(this.#path, () => ok(inTransaction(this.#db, kind, work)));
  }
}

/** Writes a whole new yard into empty tables. To be called inside a transaction. */
export function writeNewYard(
  db: Database.Database,
  path: string,
  yard: Yard,
  images: readonly NewImage[],
): void {
  const tables = new YardTables(db, path);
  const srsId = srsIdOf(yard.details.frame);
  tables.insertRow('details', yard.details, 0, srsId);
  writeFrame(db, yard.details.frame);
  for (const part of YARD_PARTS) {
    if (part === 'details') continue;
    yard[part].forEach((row, index) => {
      tables.insertRow(part, row, index, srsId);
    });
  }
  writeImages(db, images);
  writeAreas(db, yard);
  writeContents(
    db,
    YARD_PARTS.flatMap((part) => tablesOf(part).map((table) => table.name)),
  );
}

/** What is wrong with images handed over, or null: their names must be what their bytes say. */
export function checkImages(images: readonly NewImage[]): string | null {
  const wrong = images.find((image) => sha256(image.bytes) !== image.imageHash);
  return wrong === undefined ? null : `the bytes of image ${wrong.imageHash} do not match its hash`;
}

function writeImages(db: Database.Database, images: readonly NewImage[]): void {
  const insert = db.prepare('INSERT OR IGNORE INTO images (image_hash, media_type, bytes) VALUES (?, ?, ?)');
  for (const { imageHash, mediaType, bytes } of images) {
    insert.run(imageHash, mediaType, Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  }
}

/** SQLite's own count of changes to the schema. */
function schemaVersionOf(db: Database.Database): unknown {
  return db.pragma('schema_version', { simple: true });
}

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

export function badRequest(detail: string): Trouble {
  return trouble({ kind: 'host/bad-request', where: {}, facts: { detail } });
}
