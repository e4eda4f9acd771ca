import { tracedRing } from '../curves/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Outline, Traced } from '../yard.ts';

/** A place that was found or flagged once, with one error for all that follows it. */
export interface PlacedPoint {
  readonly at: YardPoint;
  /** null = the end of a cut line. */
  readonly outlineId: string | null;
  /** 0 = the outer edge, then the holes. */
  readonly ring: number;
  /** Which of the ring's own points. */
  readonly own: number;
}

/** Outlines do not change; each keeps the very same points, so that one is known again by identity. */
const placed = new WeakMap<Outline, readonly (readonly PlacedPoint[])[]>();

/** The points a person placed, ring by ring, the outer edge first. */
export function placedPointsOf(outline: Outline): readonly (readonly PlacedPoint[])[] {
  const known = placed.get(outline);
  if (known !== undefined) return known;
  const outlineId = outline.id;
  const rings = [outline.outer, ...outline.holes].map((traced, ring) =>
    ownPointsOf(traced).map((at, own) => ({ at, outlineId, ring, own })),
  );
  placed.set(outline, rings);
  return rings;
}

function ownPointsOf(traced: Traced): readonly YardPoint[] {
  return tracedRing(traced);
}
