import { distanceM } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { type Chord, findChords } from './chords.ts';
import { cornersOf, type Facing, faceAlong } from './facing.ts';
import { splitRegion } from './splitRegion.ts';

/** A straight line from one place to another. */
export interface CutEnds {
  readonly from: YardPoint;
  readonly to: YardPoint;
}

/** The two sides of a line, as one sees them walking from its `from` to its `to`. */
export interface Sides {
  readonly left: Region;
  readonly right: Region;
}

/** What a line crosses of a region: whole runs of ground, in order from `from` to `to`. */
export interface Run {
  readonly facing: Facing;
  readonly chords: readonly Chord[];
}

/**
 * The runs of ground a line means: those it covers by more than half, or that hold more than half of it. So an end a
 * little short of the edge, or a little past it, counts as on the edge.
 *
 * @returns undefined when the line has no length, or crosses no ground
 */
export function runAlong(region: Region, { from, to }: CutEnds): Run | undefined {
  const lengthM = distanceM(from, to);
  const origin = region.outer[0];
  if (!(lengthM > 0) || origin === undefined) return undefined;
  // Turned so that what lies to the left of the way from `from` to `to` is below the line.
  const normal = { x: (to.yM - from.yM) / lengthM, y: -(to.xM - from.xM) / lengthM };
  const facing = faceAlong(cornersOf(region), normal);
  const [x, y] = [from.xM - origin.xM, from.yM - origin.yM];
  const startM = y * normal.x - x * normal.y;
  const chords = (findChords(facing, x * normal.x + y * normal.y) ?? []).filter(({ start, end }) => {
    const sharedM = Math.min(end.vM, startM + lengthM) - Math.max(start.vM, startM);
    return sharedM > Math.min(end.vM - start.vM, lengthM) / 2;
  });
  return chords.length === 0 ? undefined : { facing, chords };
}

/**
 * Parts a region along a straight line from edge to edge; beds on the way are crossed with it.
 *
 * @returns undefined when the line does not leave exactly one connected part on each hand
 * Accuracy: the two areas sum to the region's to rounding
 * Cost: n log n in the corners
 */
export function splitAlong(region: Region, line: CutEnds): Sides | undefined {
  const run = runAlong(region, line);
  const halves = run && splitRegion(run.facing, run.chords);
  return halves && { left: halves.below, right: halves.above };
}
