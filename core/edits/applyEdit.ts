import { Defect } from '../result.ts';
import type { Yard } from '../yard.ts';
import { type Change, type Edit, rowsOf } from './edit.ts';

/**
 * The yard after an edit. Rows the edit does not name are shared with the old yard, by identity.
 * Throws a Defect when the edit was not made from this yard (a row to change is missing, a new row exists).
 */
export function applyEdit(yard: Yard, edit: Edit): Yard {
  return edit.changes.reduce(applyChange, yard);
}

/** The edit that takes `applyEdit(yard, edit)` back to `yard`, row order included. */
export function inverseOf(edit: Edit): Edit {
  return {
    label: edit.label,
    changes: [...edit.changes]
      .reverse()
      .map((change) => ({ ...change, before: change.after, after: change.before }) as Change),
  };
}

function applyChange(yard: Yard, change: Change): Yard {
  if (change.part === 'details') {
    if (change.after === null) throw new Defect('a yard always has its details');
    return { ...yard, details: change.after };
  }
  const rows: { readonly id: string }[] = [...rowsOf(yard, change.part)];
  const at = rows.findIndex((row) => row.id === change.id);
  if (at >= 0 !== (change.before !== null)) {
    throw new Defect(`edit does not fit this yard: ${change.part} ${change.id}`);
  }
  if (change.after === null) rows.splice(at, 1);
  else if (at >= 0) rows[at] = change.after;
  else rows.splice(Math.min(change.index, rows.length), 0, change.after);
  return { ...yard, [change.part]: rows };
}
