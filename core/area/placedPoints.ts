import { ownPoints } from '../curves/index.ts';
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
  /** What it is measured from: of an oval's radius, length and width its centre; null = it is a place of its own. */
  readonly from: YardPoint | null;
}

/** Outlines do not change; each keeps the very same points, so that one is known again by identity. */
const placed = new WeakMap<Outline, readonly (readonly PlacedPoint[])[]>();

/** The points a person placed, ring by ring, the outer edge first. */
export function placedPointsOf(outline: Outline): readonly (readonly PlacedPoint[])[] {
  const known = placed.get(outline);
  if (known !== undefined) return known;
  const outlineId = outline.id;
  const rings = [outline.outer, ...outline.holes].map((traced, ring) => pointsOf(traced, outlineId, ring));
  placed.set(outline, rings);
  return rings;
}

function pointsOf(traced: Traced, outlineId: string, ring: number): readonly PlacedPoint[] {
  // What is dragged is nearly always this: its corners as they are, with nothing made that is thrown away.
  if (traced.kind === 'corners' && traced.corners.every(({ run }) => run === undefined)) {
    return traced.corners.map((at, own) => ({ at, outlineId, ring, own, from: null }));
  }
  const centre = traced.kind === 'corners' ? null : traced.centre;
  return ownPoints(traced).map(({ kind, place }, own) => {
    return { at: place, outlineId, ring, own, from: kind === 'centre' ? null : centre };
  });
}
