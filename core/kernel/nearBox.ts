import type { Region, Ring, YardPoint } from '../spaces.ts';
import { grown, type RingBounds } from './measure.ts';

/** Kept round the box, so that the edges that run back along its sides lie well clear of what is asked about. */
const ROOM_M = 1;

/**
 * Regions cut down to what lies in and close round a box: the same ground inside the box, whatever else is left out.
 * Their rings may run back over themselves outside it, which an overlay takes out (even-odd).
 *
 * Accuracy: rounding of a double where an edge is cut, outside the box
 * Cost: a few comparisons a corner
 * Source: Sutherland & Hodgman 1974, reentrant polygon clipping, one side of the box after another
 */
export function nearBox(regions: readonly Region[], bounds: RingBounds): readonly Region[] {
  const box = grown(bounds, ROOM_M);
  return regions.flatMap(({ outer, holes }) => {
    const cut = cutToBox(outer, box);
    if (cut.length < 3) return [];
    return [
      { outer: cut, holes: holes.map((hole) => cutToBox(hole, box)).filter(({ length }) => length >= 3) },
    ];
  });
}

function cutToBox(ring: Ring, { minXM, minYM, maxXM, maxYM }: RingBounds): Ring {
  let cut = cutAt(ring, ({ xM }) => xM - minXM);
  cut = cutAt(cut, ({ xM }) => maxXM - xM);
  cut = cutAt(cut, ({ yM }) => yM - minYM);
  return cutAt(cut, ({ yM }) => maxYM - yM);
}

/** The part of a ring on the side where the depth is not negative. */
function cutAt(ring: Ring, depthOf: (point: YardPoint) => number): Ring {
  const kept: YardPoint[] = [];
  let before = ring.at(-1) as YardPoint;
  let depthBefore = ring.length === 0 ? 0 : depthOf(before);
  for (const point of ring) {
    const depth = depthOf(point);
    if (depth < 0 !== depthBefore < 0) {
      const share = depthBefore / (depthBefore - depth);
      kept.push({
        xM: before.xM + share * (point.xM - before.xM),
        yM: before.yM + share * (point.yM - before.yM),
      });
    }
    if (depth >= 0) kept.push(point);
    [before, depthBefore] = [point, depth];
  }
  return kept;
}
