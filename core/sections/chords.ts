import type { YardPoint } from '../spaces.ts';
import { type Corner, type Facing, ON_CUT_M } from './facing.ts';

/** Where a cut meets an edge. `rising`: the edge, walked with the ground on its left, goes from below to above. */
export interface Crossing {
  readonly edge: Corner;
  readonly at: YardPoint;
  readonly vM: number;
  /** Change of vM as the cut moves up. */
  readonly slope: number;
  readonly rising: boolean;
}

/** One run of the cut over the ground, from `start` (rising) to `end` (falling). */
export interface Chord {
  readonly start: Crossing;
  readonly end: Crossing;
}

/** Two crossings nearer than this along the cut may have swapped places by rounding. */
const SAME_PLACE_M = 1e-7;

/**
 * The runs of a cut over the ground, in order along it; undefined when rounding leaves no consistent order (the
 * caller then tries another cut). The ground lies to the left of its edges, so along the cut an edge going up
 * opens a run and one going down closes it, in turn.
 *
 * @param isBelow on which side a corner counts; without it those on the cut count as below
 */
export function findChords(
  facing: Facing,
  levelM: number,
  isBelow: (corner: Corner) => boolean = (corner) => corner.uM <= levelM + ON_CUT_M,
): Chord[] | undefined {
  const crossings: Crossing[] = [];
  for (const corner of facing.corners) {
    const rising = isBelow(corner);
    if (rising !== isBelow(corner.next)) crossings.push(crossingOf(corner, levelM, rising));
  }
  crossings.sort((a, b) => a.vM - b.vM || a.edge.index - b.edge.index);
  const chords: Chord[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    if (!putInTurn(crossings, i, true) || !putInTurn(crossings, i + 1, false)) return undefined;
    chords.push({ start: crossings[i] as Crossing, end: crossings[i + 1] as Crossing });
  }
  return chords;
}

/** Where an edge meets the cut. */
function crossingOf(edge: Corner, levelM: number, rising: boolean): Crossing {
  const a = edge;
  const b = edge.next;
  const slope = (b.vM - a.vM) / (b.uM - a.uM);
  const part = (levelM - a.uM) / (b.uM - a.uM);
  if (part <= 0) return { edge, at: a.at, vM: a.vM, slope, rising };
  if (part >= 1) return { edge, at: b.at, vM: b.vM, slope, rising };
  const at = { xM: a.at.xM + (b.at.xM - a.at.xM) * part, yM: a.at.yM + (b.at.yM - a.at.yM) * part };
  return { edge, at, vM: a.vM + (b.vM - a.vM) * part, slope, rising };
}

/** The same runs of ground on the line at another level, where it still crosses the same edges. */
export function chordsAt(chords: readonly Chord[], levelM: number): Chord[] {
  return chords.map(({ start, end }) => ({
    start: crossingOf(start.edge, levelM, true),
    end: crossingOf(end.edge, levelM, false),
  }));
}

/** Makes crossing `i` the kind whose turn it is, swapping with one at the same place if need be. */
function putInTurn(crossings: Crossing[], i: number, rising: boolean): boolean {
  const wanted = crossings[i] as Crossing;
  if (wanted.rising === rising) return true;
  const other = crossings.findIndex((c, k) => k > i && c.rising === rising);
  const found = crossings[other];
  if (found === undefined || found.vM - wanted.vM > SAME_PLACE_M) return false;
  crossings.splice(other, 1);
  crossings.splice(i, 0, found);
  return true;
}
