import type { Region, Ring } from '../spaces.ts';
import type { Outline, Traced } from '../yard.ts';

/** Traced edges do not change, so what they come to is worked out once. */
const rings = new WeakMap<Traced, Ring>();

/**
 * The open ring of corners that stands for a traced edge. A ring of straight edges is its own corners.
 */
export function tracedRing(traced: Traced): Ring {
  const known = rings.get(traced);
  if (known !== undefined) return known;
  const ring = ringOf(traced);
  rings.set(traced, ring);
  return ring;
}

/** An outline's rings as they are computed with, the outer one first. */
export function outlineRings({ outer, holes }: Pick<Outline, 'outer' | 'holes'>): readonly Ring[] {
  return [outer, ...holes].map(tracedRing);
}

/** The same as a region, its rings running as they were traced. */
export function tracedRegion({ outer, holes }: Pick<Outline, 'outer' | 'holes'>): Region {
  return { outer: tracedRing(outer), holes: holes.map(tracedRing) };
}

function ringOf(traced: Traced): Ring {
  if (traced.kind === 'corners') return traced.corners;
  throw new Error('not yet');
}
