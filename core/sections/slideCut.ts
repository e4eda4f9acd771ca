import { distanceM, nearestOnEdge, signedAreaM2 } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { type CutEnds, runAlong, splitAlong } from './splitAlong.ts';
import type { TapeSide, TapeSides } from './TapeSides.ts';

/** A place on an edge of ground, and the straight side a tape is laid along to find it. */
export interface EdgePlace {
  readonly at: YardPoint;
  /** The edge itself, with the ground on its left. */
  readonly edge: CutEnds;
  /** From the end of the side that is nearer to `at`, to its other end. */
  readonly side: TapeSide;
  /** Along the side, from its `from`. */
  readonly alongM: number;
}

/** Marks this near to a corner are the corner. */
const SAME_M = 1e-6;

/** The place on the edges of some ground that is nearest to a point; undefined where there is no ground. */
export function nearestEdgePlace(
  regions: readonly Region[],
  point: YardPoint,
  sides: TapeSides,
): EdgePlace | undefined {
  let best: { at: YardPoint; edge: CutEnds } | undefined;
  let bestM = Number.POSITIVE_INFINITY;
  for (const { outer, holes } of regions) {
    for (const ring of [outer, ...holes]) {
      ring.forEach((from, i) => {
        const to = ring[(i + 1) % ring.length] ?? from;
        const at = nearestOnEdge(from, to, point);
        const farM = distanceM(at, point);
        if (farM >= bestM) return;
        best = { at, edge: { from, to } };
        bestM = farM;
      });
    }
  }
  return best && placeOn(best.edge, best.at, sides);
}

/** The tape mark nearest to a place, on the same edge: a whole multiple of `markM` from the nearer end of its side. */
export function onMark(place: EdgePlace, markM: number, sides: TapeSides): EdgePlace {
  return atAlong(place, Math.round(place.alongM / markM) * markM, sides) ?? place;
}

/** The next mark along the edge: on (1) the way it runs, or back (-1); the place itself at the end of the edge. */
export function nextMark(place: EdgePlace, markM: number, by: 1 | -1, sides: TapeSides): EdgePlace {
  const { side, edge } = place;
  const along =
    (side.to.xM - side.from.xM) * (edge.to.xM - edge.from.xM) +
    (side.to.yM - side.from.yM) * (edge.to.yM - edge.from.yM);
  const step = by * Math.sign(along);
  const marks = place.alongM / markM;
  // Off a mark the next one is less than a mark away.
  const next = step > 0 ? Math.floor(marks + SAME_M / markM) + 1 : Math.ceil(marks - SAME_M / markM) - 1;
  return atAlong(place, next * markM, sides) ?? place;
}

/** The place so far along the same side; undefined where that is off its edge. */
export function atAlong(place: EdgePlace, alongM: number, sides: TapeSides): EdgePlace | undefined {
  const { side, edge } = place;
  const lengthM = distanceM(side.from, side.to);
  const target = {
    xM: side.from.xM + ((side.to.xM - side.from.xM) * alongM) / lengthM,
    yM: side.from.yM + ((side.to.yM - side.from.yM) * alongM) / lengthM,
  };
  const at = nearestOnEdge(edge.from, edge.to, target);
  return distanceM(at, target) > OFF_SIDE_M ? undefined : placeOn(edge, at, sides);
}

/** A side may lie some grid steps off the edge that was cut from it. */
const OFF_SIDE_M = 1e-4;

function placeOn(edge: CutEnds, at: YardPoint, sides: TapeSides): EdgePlace {
  const under = sides.under(edge.from, edge.to)[0] ?? edge;
  const isNearer = distanceM(under.from, at) <= distanceM(under.to, at);
  const side = isNearer ? { from: under.from, to: under.to } : { from: under.to, to: under.from };
  return { at, edge, side, alongM: distanceM(side.from, at) };
}

/**
 * A cut moved square to itself, to the left of its way where `byM` is positive, and taken on to the edges there.
 *
 * @returns undefined where no ground is left to cross, or the line does not part it in two
 */
export function parallelCut(bed: Region, cut: CutEnds, byM: number): CutEnds | undefined {
  const lengthM = distanceM(cut.from, cut.to);
  const [x, y] = [(cut.to.xM - cut.from.xM) / lengthM, (cut.to.yM - cut.from.yM) / lengthM];
  const moved = (at: YardPoint): YardPoint => ({ xM: at.xM - y * byM, yM: at.yM + x * byM });
  const run = runAlong(bed, { from: moved(cut.from), to: moved(cut.to) });
  const [first, last] = [run?.chords[0], run?.chords.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const line = { from: first.start.at, to: last.end.at };
  return splitAlong(bed, line) && line;
}

/** How far a point lies to the left of a line's way. */
export function leftOfM({ from, to }: CutEnds, at: YardPoint): number {
  return (2 * signedAreaM2([from, to, at])) / distanceM(from, to);
}
