import type { Region, Ring, YardPoint } from '../spaces.ts';
import type { Outline, Traced, TracedCorner } from '../yard.ts';
import { pointsBetween } from './edgePoints.ts';
import { ovalOf } from './ovalOf.ts';
import { ovalRing } from './ovalRing.ts';

interface Drawn {
  readonly ring: Ring;
  readonly edgeOfVertex: readonly number[];
}

/** Traced edges do not change, so what they come to is worked out once. */
const drawn = new WeakMap<Traced, Drawn>();

/**
 * The open ring of corners that stands for a traced edge, starting at its first corner. Its own corners are corners
 * of the ring, bit for bit; a ring of straight edges is its own corners.
 *
 * Accuracy: nowhere farther than 2 mm from the curve, and its area is the curve's but for rounding (relative 1e-12)
 * Cost: an edge looks at its own corners and one more to either side
 */
export function tracedRing(traced: Traced): Ring {
  return drawnOf(traced).ring;
}

/** For each corner i of `tracedRing`, the traced edge that the ring's edge from i to i + 1 is a part of; of an oval 0. */
export function edgeOfVertex(traced: Traced): readonly number[] {
  return drawnOf(traced).edgeOfVertex;
}

/** The corners that stand for one traced edge, both its ends included; of an oval its closed ring. */
export function edgePath(traced: Traced, edge: number): readonly YardPoint[] {
  if (traced.kind !== 'corners') {
    const ring = tracedRing(traced);
    return [...ring, ...ring.slice(0, 1)];
  }
  const { corners } = traced;
  const ends = [corners[edge], corners[(edge + 1) % corners.length]] as [TracedCorner, TracedCorner];
  return [ends[0], ...pointsBetween(corners, edge), ends[1]];
}

/** An outline's rings as they are computed with, the outer one first. */
export function outlineRings({ outer, holes }: Pick<Outline, 'outer' | 'holes'>): readonly Ring[] {
  return [outer, ...holes].map(tracedRing);
}

/** The same as a region, its rings running as they were traced. */
export function tracedRegion({ outer, holes }: Pick<Outline, 'outer' | 'holes'>): Region {
  return { outer: tracedRing(outer), holes: holes.map(tracedRing) };
}

function drawnOf(traced: Traced): Drawn {
  const known = drawn.get(traced);
  if (known !== undefined) return known;
  const made = draw(traced);
  drawn.set(traced, made);
  return made;
}

function draw(traced: Traced): Drawn {
  if (traced.kind !== 'corners') {
    const ring = ovalRing(ovalOf(traced));
    return { ring, edgeOfVertex: ring.map(() => 0) };
  }
  const { corners } = traced;
  if (corners.every(({ run }) => run === undefined)) {
    return { ring: corners, edgeOfVertex: corners.map((_, i) => i) };
  }
  const ring: YardPoint[] = [];
  const edges: number[] = [];
  for (const [edge, corner] of corners.entries()) {
    // Without its run: a ring with runs in it, taken for traced corners, would bend a second time.
    const { xM, yM } = corner;
    for (const point of [{ xM, yM }, ...pointsBetween(corners, edge)]) {
      ring.push(point);
      edges.push(edge);
    }
  }
  return { ring, edgeOfVertex: edges };
}
