import { tracedRing } from '../curves/index.ts';
import { GRID_M } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Outline, Traced } from '../yard.ts';

/** A place that was found or flagged once, so that all that stands on it is off by the same error. */
export interface PlacedPoint {
  /** The same for points at the same place on the kernel grid: they were snapped, and are one. */
  readonly key: string;
  readonly at: YardPoint;
  /** null = the end of a cut line. */
  readonly outlineId: string | null;
  /** 0 = the outer edge, then the holes. */
  readonly ring: number;
  /** Which of the ring's own points. */
  readonly own: number;
}

/** Exactly the factor by which the kernel goes to its grid. */
const PER_M = 1 / GRID_M;

/** Corners are kept as they are while others move, so their keys are made once. */
const keys = new WeakMap<YardPoint, string>();

/** The place of a point on the kernel grid. */
export function placeKey(point: YardPoint): string {
  const known = keys.get(point);
  if (known !== undefined) return known;
  const key = `${Math.round(point.xM * PER_M)},${Math.round(point.yM * PER_M)}`;
  keys.set(point, key);
  return key;
}

const placed = new WeakMap<Outline, readonly (readonly PlacedPoint[])[]>();

/** The points a person placed, ring by ring, the outer edge first. */
export function placedPointsOf(outline: Outline): readonly (readonly PlacedPoint[])[] {
  const known = placed.get(outline);
  if (known !== undefined) return known;
  const rings = [outline.outer, ...outline.holes].map((traced, ring) =>
    ownPointsOf(traced).map((at, own) => ({ key: placeKey(at), at, outlineId: outline.id, ring, own })),
  );
  placed.set(outline, rings);
  return rings;
}

function ownPointsOf(traced: Traced): readonly YardPoint[] {
  return tracedRing(traced);
}
