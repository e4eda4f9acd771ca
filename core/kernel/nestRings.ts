import type { Region, Ring, YardPoint } from '../spaces.ts';
import { type RingBounds, ringBounds, signedAreaM2 } from './measure.ts';

/**
 * Sorts flat rings of one overlay result into regions. Counter-clockwise rings are outer rings; each clockwise
 * one is a hole of the smallest outer ring that contains it. Rings may touch but do not cross.
 * Cost: holes times outer rings whose box contains them
 */
export function nestRings(rings: readonly Ring[]): Region[] {
  const outers: { ring: Ring; areaM2: number; bounds: RingBounds; holes: Ring[] }[] = [];
  const holes: Ring[] = [];
  for (const ring of rings) {
    const areaM2 = signedAreaM2(ring);
    if (areaM2 > 0) outers.push({ ring, areaM2, bounds: ringBounds(ring), holes: [] });
    else if (areaM2 < 0) holes.push(ring);
  }
  // Smallest first: the first that contains a hole is the one it lies in directly.
  const bySize = [...outers].sort((a, b) => a.areaM2 - b.areaM2);
  for (const hole of holes) {
    const box = ringBounds(hole);
    const holeM2 = -signedAreaM2(hole);
    const round = bySize.filter((outer) => outer.areaM2 >= holeM2 && boxInside(box, outer.bounds));
    // With one ring round its box there is nothing to ask; that is nearly every hole of nearly every yard.
    const owner = round.length === 1 ? round[0] : round.find((outer) => ringInside(hole, outer.ring));
    owner?.holes.push(hole);
  }
  return outers.map(({ ring, holes: own }) => ({ outer: ring, holes: own }));
}

/** Where a point lies against a ring, by even-odd crossing of a ray to the east; exactly on an edge is 'on'. */
export function placeInRing(ring: Ring, point: YardPoint): 'inside' | 'outside' | 'on' {
  const { xM: x, yM: y } = point;
  let inside = false;
  let a = ring[ring.length - 1] as YardPoint;
  for (const b of ring) {
    // Most edges pass wholly above or below, and cost two comparisons.
    if (!((a.yM > y && b.yM > y) || (a.yM < y && b.yM < y))) {
      const cross = (b.xM - a.xM) * (y - a.yM) - (b.yM - a.yM) * (x - a.xM);
      if (cross === 0 && Math.min(a.xM, b.xM) <= x && x <= Math.max(a.xM, b.xM)) return 'on';
      if (a.yM > y !== b.yM > y && cross > 0 === b.yM > a.yM) inside = !inside;
    }
    a = b;
  }
  return inside ? 'inside' : 'outside';
}

/** So many more corners on one side than on the other settle where a hole lies. */
const CLEAR_LEAD = 5;

/**
 * Rings do not cross but for rounding: where a hole touches an outer ring, a corner of it may lie a grid step on
 * the wrong side. So its corners and middles are asked until one answer leads clearly, or all have been.
 */
function ringInside(hole: Ring, outer: Ring): boolean {
  let lead = 0;
  for (const [i, corner] of hole.entries()) {
    const next = hole[(i + 1) % hole.length] as YardPoint;
    const middle = { xM: (corner.xM + next.xM) / 2, yM: (corner.yM + next.yM) / 2 };
    for (const point of [corner, middle]) {
      const place = placeInRing(outer, point);
      if (place !== 'on') lead += place === 'inside' ? 1 : -1;
      if (Math.abs(lead) >= CLEAR_LEAD) return lead > 0;
    }
  }
  // When every corner and middle lies on the outer ring the two share their whole edge.
  return lead >= 0;
}

/** Boxes of rings that touch may differ by the rounding of one corner. */
const BOX_SLACK_M = 2e-5;

function boxInside(inner: RingBounds, outer: RingBounds): boolean {
  return (
    inner.minXM >= outer.minXM - BOX_SLACK_M &&
    inner.minYM >= outer.minYM - BOX_SLACK_M &&
    inner.maxXM <= outer.maxXM + BOX_SLACK_M &&
    inner.maxYM <= outer.maxYM + BOX_SLACK_M
  );
}
