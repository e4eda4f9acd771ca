import type { Corner, Facing } from './facing.ts';

/** Corners nearer than this to the line lie on it. */
const ON_LINE_M = 1e-7;

type Side = 'below' | 'above' | 'on';

/**
 * On which side each corner counts, so that a line through corners and along edges runs over the ground only: it ends
 * where an edge begins to run along it, and at a corner that touches it, for ground that hangs together by one
 * point is two pieces.
 *
 * @returns what `findChords` takes
 * Source: corners on the line, one after another, come from one side and go to one. From one side back to it, where
 *   they stick into the ground they count to the other side, which ends the run of ground there, else to their own.
 *   From one side to the other, ground lies to the left of its edges: along the line it lies above, so the
 *   crossing is at the far end when they count below; against it the other way round. Own work.
 */
export function sidesOfLine(facing: Facing, levelM: number): (corner: Corner) => boolean {
  const sideOf = ({ uM }: Corner): Side =>
    Math.abs(uM - levelM) <= ON_LINE_M ? 'on' : uM < levelM ? 'below' : 'above';
  const onLine = new Map<Corner, boolean>();
  for (const before of facing.corners) {
    const from = sideOf(before);
    if (from === 'on' || sideOf(before.next) !== 'on') continue;
    const run: Corner[] = [];
    let corner = before.next;
    for (; sideOf(corner) === 'on'; corner = corner.next) run.push(corner);
    const [first, last] = [run[0] as Corner, run.at(-1) as Corner];
    const to = sideOf(corner);
    const isBelow = from === to ? (from === 'below') !== first.reflex : last.vM >= first.vM;
    for (const one of run) onLine.set(one, isBelow);
  }
  return (corner) => onLine.get(corner) ?? corner.uM <= levelM;
}
