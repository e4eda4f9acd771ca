import { distanceM, findCrossing, someCrossing } from '../kernel/index.ts';
import type { Traced, TracedCorner } from '../yard.ts';
import { withStretchTurned } from './reversedTraced.ts';
import { edgeOfVertex, tracedRing } from './tracedRing.ts';

/** Turnings are given up after so many for each corner; crossings of a hand's slip need one or two in all. */
const MOST_TURNINGS_A_CORNER = 8;

/**
 * A traced edge that crosses itself, mended: where two straight edges cross, the stretch of corners between them is
 * walked the other way round, until nothing crosses. Every corner stays where it is, the first the first.
 *
 * @returns null when it cannot be mended so: a curve crosses, the edge touches itself or runs back over itself
 * Accuracy: every turning makes the edge shorter, so it ends; which crossing goes first is fixed by the corners
 * Cost: for each turning one search for crossings, n log n
 * Source: 2-opt (Croes 1958, "A method for solving traveling-salesman problems"): two sides of a quadrangle are
 * together shorter than its crossing diagonals
 */
export function uncrossed(traced: Traced): Traced | null {
  if (traced.kind !== 'corners') return null;
  let now: Traced & { readonly kind: 'corners' } = traced;
  for (let left = MOST_TURNINGS_A_CORNER * traced.corners.length; left > 0; left--) {
    if (findCrossing(tracedRing(now)) === undefined) return now;
    const corners = turnedOnce(now);
    if (corners === null) return null;
    now = { kind: 'corners', corners };
  }
  return null;
}

/** The corners with the first stretch turned whose turning makes the edge shorter. */
function turnedOnce(traced: Traced & { readonly kind: 'corners' }): readonly TracedCorner[] | null {
  const { corners } = traced;
  const edgeOf = edgeOfVertex(traced);
  let found: readonly TracedCorner[] | null = null;
  someCrossing(tracedRing(traced), (vertex, otherVertex) => {
    const [edge, other] = [edgeOf[vertex], edgeOf[otherVertex]] as [number, number];
    const ends = [edge, edge + 1, other, (other + 1) % corners.length].map((i) => corners[i] as TracedCorner);
    const [a, b, c, d] = ends as [TracedCorner, TracedCorner, TracedCorner, TracedCorner];
    if (edge === other || a.run !== undefined || c.run !== undefined) return false;
    const crossedM = distanceM(a, b) + distanceM(c, d);
    if (!(distanceM(a, c) + distanceM(b, d) < crossedM * (1 - LEAST_GAIN))) return false;
    found = withStretchTurned(corners, edge, other);
    return true;
  });
  return found;
}

/** Below this share a shortening is rounding. */
const LEAST_GAIN = 1e-12;
