import { applyEdit, type Edit, makeEdit, putRow, removeRow } from '../../core/edits/index.ts';
import type { Yard } from '../../core/yard.ts';
import { fullYard, moveCorner, point, rectOutline } from './storedYards.ts';

/** The nth edit of an endless series that adds, moves and removes; needs only the yard before it. */
export function editAt(yard: Yard, n: number): Edit {
  if (n % 3 === 1) {
    const added = rectOutline(`n${n}`, n % 2 === 0 ? 'zone' : 'bed', n, n / 7, 3, 4);
    return makeEdit(`add ${n}`, putRow(yard, 'outlines', added));
  }
  if (n % 9 === 0) {
    const oldest = yard.outlines.find((row) => row.id.startsWith('n'));
    const removal = oldest && removeRow(yard, 'outlines', oldest.id);
    if (removal) return makeEdit(`remove ${n}`, removal);
  }
  return moveCorner(yard, 'z1', point(n / 3, -n));
}

/** The yard after the first `count` edits of the series, from `fullYard()`. */
export function yardAfter(count: number, from: Yard = fullYard(), start = 0): Yard {
  let yard = from;
  for (let n = start + 1; n <= count; n += 1) yard = applyEdit(yard, editAt(yard, n));
  return yard;
}
