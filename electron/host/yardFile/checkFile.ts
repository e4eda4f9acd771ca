import Database from 'better-sqlite3';
import {
  MIGRATIONS,
  type Migration,
  type Reading,
  readAs,
  unreadable,
} from '../../../core/yardFile/index.ts';

/** 'GPKG' in the header of the SQLite file. Source: OGC 12-128r17, requirement 2. */
export const GPKG_APPLICATION_ID = 0x47504b47;
/** GeoPackage 1.3, which every current reader knows without a warning. */
export const GPKG_VERSION = 10_300;

/** No outline, list or name comes near; a file that says otherwise would only fill the memory. */
const MOST_BYTES = 64 * 2 ** 20;
const MOST_IMAGE_BYTES = 512 * 2 ** 20;

/** The schema version of a yard file; null when the tables of a yard are not in it at all. */
export function readVersion(db: Database.Database): Reading<number> | null {
  if (db.pragma('application_id', { simple: true }) !== GPKG_APPLICATION_ID) return null;
  const type = db.prepare("SELECT type FROM sqlite_schema WHERE name = 'yard_version'").pluck().get();
  if (type === undefined) return null;
  // A view could count for ever.
  if (type !== 'table') return unreadable(`yard_version is a ${type} and not a table`);
  const rows = db.prepare('SELECT schema_version FROM yard_version LIMIT 2').pluck().all();
  const version = rows[0];
  if (rows.length !== 1 || typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1) {
    return unreadable('yard_version does not hold one version number');
  }
  return readAs(version);
}

/**
 * What is wrong with the pages of the file, as far as a quick look tells; null when nothing.
 *
 * @param fileBytes size of the file on the disk: SQLite itself takes a last page cut short for one of zeros
 */
export function checkPages(db: Database.Database, fileBytes: number): string | null {
  const pages = Number(db.pragma('page_count', { simple: true }));
  const pageBytes = Number(db.pragma('page_size', { simple: true }));
  if (fileBytes < pages * pageBytes) return 'the end of the file is missing';
  const found = db.pragma('quick_check(1)', { simple: true });
  return found === 'ok' ? null : String(found).replaceAll(/\s+/g, ' ');
}

/** Tables SQLite keeps behind a spatial index; they come and go with it. */
const INDEX_PART = /^rtree_.*_(node|parent|rowid)$/;

interface SchemaRow {
  readonly type: string;
  readonly name: string;
  readonly tableName: string;
  readonly sql: string | null;
}

/**
 * What in the schema is not ours and would be run or read by us; null when nothing. Every table must be a
 * table with our columns, the spatial indexes must be just that, and only our triggers may watch our tables.
 * Tables, columns and views that another program added for itself are left alone: we never touch them.
 *
 * @param migrations the steps that made the file
 */
export function checkSchema(
  db: Database.Database,
  migrations: readonly Migration[] = MIGRATIONS,
): string | null {
  const fresh = new Database(':memory:');
  try {
    for (const { sql } of migrations) fresh.exec(sql);
    const expected = readSchema(fresh);
    const found = new Map(readSchema(db).map((row) => [row.name, row]));
    const ours = expected.filter((row) => row.type === 'table' && !INDEX_PART.test(row.name));
    for (const { name, sql } of ours) {
      const row = found.get(name);
      const isIndex = sql?.startsWith('CREATE VIRTUAL') ?? false;
      if (row === undefined) {
        if (isIndex) continue; // its owner dropped the spatial index in a GIS
        return `the table ${name} is missing`;
      }
      if (row.type !== 'table') return `${name} is a ${row.type} and not a table`;
      const virtual = row.sql?.toUpperCase().startsWith('CREATE VIRTUAL') ?? false;
      if (isIndex ? row.sql !== sql : virtual) return `${name} is not the table it should be`;
      const wrong = isIndex ? null : checkColumns(fresh, db, name);
      if (wrong !== null) return wrong;
    }
    return checkTriggers(expected, found, new Set(ours.map((row) => row.name)));
  } finally {
    fresh.close();
  }
}

/** A value too big to be true, named by its table; null when there is none. Sizes are read, values are not. */
export function checkSizes(db: Database.Database, tables: readonly string[]): string | null {
  for (const table of tables) {
    const columns = db.pragma(`table_info(${table})`) as { readonly name: string }[];
    for (const { name } of columns) {
      const most = name === 'bytes' ? MOST_IMAGE_BYTES : MOST_BYTES;
      const quoted = `"${name.replaceAll('"', '""')}"`;
      const found = db.prepare(`SELECT 1 FROM ${table} WHERE octet_length(${quoted}) > ? LIMIT 1`).get(most);
      if (found !== undefined) return `${table}: a ${name} of more than ${most / 2 ** 20} MB`;
    }
  }
  return null;
}

function readSchema(db: Database.Database): SchemaRow[] {
  return db
    .prepare<[], SchemaRow>(
      "SELECT type, name, tbl_name AS tableName, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\'",
    )
    .all();
}

interface ColumnRow {
  readonly name: string;
  readonly type: string;
  readonly hidden: number;
}

function checkColumns(fresh: Database.Database, db: Database.Database, table: string): string | null {
  const columnsIn = (file: Database.Database) => file.pragma(`table_xinfo(${table})`) as ColumnRow[];
  const found = new Map(columnsIn(db).map((column) => [column.name, column]));
  for (const { name, type } of columnsIn(fresh)) {
    const column = found.get(name);
    if (column === undefined) return `the column ${table}.${name} is missing`;
    if (column.type.toUpperCase() !== type || column.hidden !== 0)
      return `${table}.${name} is not what it was`;
  }
  return null;
}

function checkTriggers(
  expected: readonly SchemaRow[],
  found: ReadonlyMap<string, SchemaRow>,
  ours: ReadonlySet<string>,
): string | null {
  const known = new Map(expected.filter((row) => row.type === 'trigger').map((row) => [row.name, row.sql]));
  for (const { type, name, tableName, sql } of found.values()) {
    if (type !== 'trigger' || !ours.has(tableName.toLowerCase())) continue; // SQLite keeps it as it was typed
    if (known.get(name) !== sql) return `the trigger ${name} on ${tableName} is not one of this program's`;
  }
  for (const name of known.keys()) {
    const index = name.slice(0, name.lastIndexOf('_'));
    if (!found.has(name) && found.has(index)) return `the trigger ${name} is missing`;
  }
  return null;
}
