import { BoxIndex, distanceToEdgeM, ringBounds } from '../kernel/index.ts';
import type { Ring, YardPoint } from '../spaces.ts';

/** Beyond what other programs round coordinates to; a hand in a GIS moves a corner by more. */
const MOST_APART_M = 0.005;

/**
 * Whether the rings in a file's geometry are still those its curves came to when it was written. Another program may
 * have begun them at another corner, turned them round or rounded them; whoever moved an edge meant the geometry.
 *
 * @param drawn, traced the outer ring first, holes in the same order
 * @returns true when no corner of either is farther than 5 mm from the edge of the other
 */
export function isAsTraced(drawn: readonly Ring[], traced: readonly Ring[]): boolean {
  return (
    drawn.length === traced.length &&
    drawn.every((ring, i) => {
      const other = traced[i] as Ring;
      return isSame(ring, other) || (liesAlong(ring, other) && liesAlong(other, ring));
    })
  );
}

/** The usual case, and the only one in which places beyond all measure compare. */
function isSame(a: Ring, b: Ring): boolean {
  return a.length === b.length && a.every(({ xM, yM }, i) => xM === b[i]?.xM && yM === b[i]?.yM);
}

function liesAlong(corners: Ring, ring: Ring): boolean {
  const edges = ring.map((from, i) => [from, ring[(i + 1) % ring.length]] as [YardPoint, YardPoint]);
  const index = new BoxIndex(edges, ringBounds);
  return corners.every((corner) => {
    const near = index.meeting({
      minXM: corner.xM - MOST_APART_M,
      minYM: corner.yM - MOST_APART_M,
      maxXM: corner.xM + MOST_APART_M,
      maxYM: corner.yM + MOST_APART_M,
    });
    return near.some(([from, to]) => distanceToEdgeM(from, to, corner) <= MOST_APART_M);
  });
}
