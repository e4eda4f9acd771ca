import type { Yard } from '../yard.ts';
import { type Edit, rowsOf } from './edit.ts';

/**
 * Whether an edit was made from rows as they stand in this yard, so that applying it loses nothing:
 * every `before` is the row that is there, every new row is new.
 */
export function editFits(yard: Yard, edit: Edit): boolean {
  return edit.changes.every((change) => {
    const row = rowsOf(yard, change.part).find((other) => other.id === change.id) ?? null;
    return row === change.before || JSON.stringify(row) === JSON.stringify(change.before);
  });
}
