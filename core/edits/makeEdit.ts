import type { Yard } from '../yard.ts';
import { type Change, type Edit, rowsOf, type YardPart, type YardRows } from './edit.ts';

/** The change that adds a row at the end of its part, or replaces the row with the same id. */
export function putRow<P extends YardPart>(yard: Yard, part: P, row: YardRows[P]): Change {
  const rows = rowsOf(yard, part);
  const at = rows.findIndex((other) => other.id === row.id);
  const before = rows[at] ?? null;
  return { part, id: row.id, index: at < 0 ? rows.length : at, before, after: row } as unknown as Change;
}

/** The change that removes a row; undefined when there is no such row. */
export function removeRow(yard: Yard, part: Exclude<YardPart, 'details'>, id: string): Change | undefined {
  const rows = rowsOf(yard, part);
  const at = rows.findIndex((row) => row.id === id);
  return at < 0 ? undefined : ({ part, id, index: at, before: rows[at], after: null } as unknown as Change);
}

/** An edit of one or more changes, all made from the same yard and naming different rows. */
export function makeEdit(label: string, ...changes: readonly Change[]): Edit {
  return { label, changes };
}
