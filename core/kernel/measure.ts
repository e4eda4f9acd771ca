import type { Region, Ring } from '../spaces.ts';
import { distanceM } from './distance.ts';

export interface RingBounds {
  readonly minXM: number;
  readonly minYM: number;
  readonly maxXM: number;
  readonly maxYM: number;
}

/**
 * Area of a ring, positive when it runs counter-clockwise.
 *
 * Accuracy: rounding of the products only; they are taken about the first vertex, so that far-off
 * coordinates cost no digits.
 * Source: shoelace (coordinate) formula
 */
export function signedAreaM2(ring: Ring): number {
  const first = ring[0];
  if (first === undefined) return 0;
  let twice = 0;
  for (let i = 1; i + 1 < ring.length; i++) {
    const { xM: ax, yM: ay } = ring[i] as Ring[number];
    const { xM: bx, yM: by } = ring[i + 1] as Ring[number];
    twice += (ax - first.xM) * (by - first.yM) - (bx - first.xM) * (ay - first.yM);
  }
  return twice / 2;
}

/** Area of a region: its outer ring less its holes, whichever way they run. */
export function regionAreaM2(region: Region): number {
  return region.holes.reduce(
    (areaM2, hole) => areaM2 - Math.abs(signedAreaM2(hole)),
    Math.abs(signedAreaM2(region.outer)),
  );
}

/** Area of regions that do not overlap. */
export function regionsAreaM2(regions: readonly Region[]): number {
  return regions.reduce((areaM2, region) => areaM2 + regionAreaM2(region), 0);
}

/** Length of a ring, its closing edge included. */
export function ringPerimeterM(ring: Ring): number {
  return ring.reduce((lengthM, point, i) => {
    const next = ring[(i + 1) % ring.length] ?? point;
    return lengthM + distanceM(point, next);
  }, 0);
}

/** Smallest upright box round a ring; of an empty ring an empty box (least above most). */
export function ringBounds(ring: Ring): RingBounds {
  let [minXM, minYM, maxXM, maxYM] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { xM, yM } of ring) {
    minXM = Math.min(minXM, xM);
    minYM = Math.min(minYM, yM);
    maxXM = Math.max(maxXM, xM);
    maxYM = Math.max(maxYM, yM);
  }
  return { minXM, minYM, maxXM, maxYM };
}

/** Whether two boxes have a point in common, touching included. */
export function boxesMeet(a: RingBounds, b: RingBounds): boolean {
  return a.minXM <= b.maxXM && b.minXM <= a.maxXM && a.minYM <= b.maxYM && b.minYM <= a.maxYM;
}

/** A box with so much more on every side. */
export function grown(box: RingBounds, byM: number): RingBounds {
  return {
    minXM: box.minXM - byM,
    minYM: box.minYM - byM,
    maxXM: box.maxXM + byM,
    maxYM: box.maxYM + byM,
  };
}

/** The same region with its outer ring counter-clockwise and its holes clockwise. */
export function orientRegion(region: Region): Region {
  return {
    outer: signedAreaM2(region.outer) < 0 ? [...region.outer].reverse() : region.outer,
    holes: region.holes.map((hole) => (signedAreaM2(hole) > 0 ? [...hole].reverse() : hole)),
  };
}
