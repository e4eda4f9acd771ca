import type Database from 'better-sqlite3';
import type { YardPart, YardRows } from '../../../core/edits/index.ts';
import {
  decodeRow,
  encodeRow,
  FEATURE_TABLES,
  freshSortKey,
  type RowTable,
  type SqlRow,
  sortKeyBetween,
  tablesOf,
  unreadable,
} from '../../../core/yardFile/index.ts';
import { readable } from './sqliteTrouble.ts';

/** Where a row lies. */
export interface RowPlace {
  readonly table: RowTable;
  readonly fid: number;
  readonly sortOrder: number;
}

interface PlacedRow {
  readonly table: RowTable;
  readonly columns: Record<string, unknown> & { fid: number; sort_order: unknown };
}

const FEATURES: ReadonlySet<string> = new Set(FEATURE_TABLES.map((table) => table.name));

/** Reads and writes the rows of the yard document. To be called inside a transaction; throws Refusals. */
export class YardTables {
  readonly #db: Database.Database;
  readonly #path: string;
  readonly #statements = new Map<string, Database.Statement<unknown[]>>();

  constructor(db: Database.Database, path: string) {
    this.#db = db;
    this.#path = path;
  }

  /** All rows of a part, in their order. */
  readRows<P extends YardPart>(part: P): YardRows[P][] {
    const rows = tablesOf(part).flatMap((table) => this.#select(table));
    if (tablesOf(part).length > 1) rows.sort((a, b) => sortOrderOf(a) - sortOrderOf(b));
    const decoded = rows.map(({ table, columns }) => readable(this.#path, decodeRow<P>(table, columns)));
    const ids = new Set(decoded.map((row) => row.id));
    if (ids.size !== decoded.length) readable(this.#path, unreadable(`${part}: an id is there twice`));
    return decoded;
  }

  /** One row and where it lies; null when there is none. */
  findRow<P extends YardPart>(part: P, id: string): { row: YardRows[P]; place: RowPlace } | null {
    for (const table of tablesOf(part)) {
      const [found, another] = this.#select(table, part === 'details' ? undefined : id);
      if (found === undefined) continue;
      if (another !== undefined) readable(this.#path, unreadable(`${table.name}: an id is there twice`));
      const row = readable(this.#path, decodeRow<P>(table, found.columns));
      if (row.id !== id) continue;
      return { row, place: { table, fid: found.columns.fid, sortOrder: sortOrderOf(found) } };
    }
    return null;
  }

  /** Puts a new row at `index` of its part, or at the end when the part is shorter. */
  insertRow<P extends YardPart>(part: P, row: YardRows[P], index: number, srsId: number): void {
    const { table, columns } = encodeRow(part, row, srsId);
    this.#insert(
      table,
      part === 'details' ? columns : { ...columns, sort_order: this.#sortKeyAt(part, index) },
    );
  }

  /** Replaces a row where it lies; an outline that became another kind moves to its table and keeps its place. */
  updateRow<P extends YardPart>(part: P, row: YardRows[P], place: RowPlace, srsId: number): void {
    const { table, columns } = encodeRow(part, row, srsId);
    if (table !== place.table.name) {
      this.deleteRow(place);
      this.#insert(table, { ...columns, sort_order: place.sortOrder });
      return;
    }
    const names = Object.keys(columns);
    this.#run(`UPDATE ${table} SET ${names.map((name) => `${name} = ?`).join(', ')} WHERE fid = ?`, [
      ...bindable(columns),
      place.fid,
    ]);
  }

  deleteRow(place: RowPlace): void {
    this.#run(`DELETE FROM ${place.table.name} WHERE fid = ?`, [place.fid]);
  }

  #insert(table: string, columns: SqlRow): void {
    const names = Object.keys(columns);
    const marks = names.map(() => '?').join(', ');
    this.#run(`INSERT INTO ${table} (${names.join(', ')}) VALUES (${marks})`, bindable(columns));
  }

  #select(table: RowTable, id?: string): PlacedRow[] {
    const listed = table.part !== 'details';
    const columns = ['fid', ...(listed ? ['sort_order'] : []), ...table.columns].join(', ');
    const conditions = [
      ...(FEATURES.has(table.name) ? ['revision_to IS NULL'] : []),
      ...(id === undefined ? [] : ['id = ?']),
    ];
    const where = conditions.length === 0 ? '' : ` WHERE ${conditions.join(' AND ')}`;
    const sql = `SELECT ${columns} FROM ${table.name}${where} ORDER BY ${listed ? 'sort_order, ' : ''}fid`;
    const rows = this.#prepare(sql).all(...(id === undefined ? [] : [id]));
    return rows.map((row) => ({ table, columns: row as PlacedRow['columns'] }));
  }

  /** A key that puts a row at `index`; when there is no room, the part is first numbered afresh. */
  #sortKeyAt(part: YardPart, index: number): number {
    const keys = this.#keysOf(part);
    const at = Math.min(index, keys.length);
    const key = sortKeyBetween(keys[at - 1]?.key ?? null, keys[at]?.key ?? null);
    if (key !== null) return key;
    keys.forEach(({ table, fid }, i) => {
      this.#run(`UPDATE ${table} SET sort_order = ? WHERE fid = ?`, [freshSortKey(i < at ? i : i + 1), fid]);
    });
    return freshSortKey(at);
  }

  #keysOf(part: YardPart): { table: string; fid: number; key: number }[] {
    const keys = tablesOf(part).flatMap(({ name }) => {
      const where = FEATURES.has(name) ? ' WHERE revision_to IS NULL' : '';
      const rows = this.#prepare(
        `SELECT fid, sort_order FROM ${name}${where} ORDER BY sort_order, fid`,
      ).all();
      return (rows as { fid: number; sort_order: unknown }[]).map(({ fid, sort_order }) => ({
        table: name,
        fid,
        key: Number(sort_order),
      }));
    });
    return keys.sort((a, b) => a.key - b.key);
  }

  #run(sql: string, values: readonly unknown[]): void {
    this.#prepare(sql).run(...values);
  }

  #prepare(sql: string): Database.Statement<unknown[]> {
    const known = this.#statements.get(sql);
    if (known !== undefined) return known;
    const made = this.#db.prepare<unknown[]>(sql);
    this.#statements.set(sql, made);
    return made;
  }
}

function sortOrderOf({ columns }: PlacedRow): number {
  return Number(columns.sort_order ?? 0);
}

/** SQLite's driver takes bytes as Buffer only; the Buffer shares the bytes. */
function bindable(columns: SqlRow): unknown[] {
  return Object.values(columns).map((value) =>
    value instanceof Uint8Array ? Buffer.from(value.buffer, value.byteOffset, value.byteLength) : value,
  );
}
