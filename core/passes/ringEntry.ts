import { distanceM, distanceToEdgeM, nearestOnEdge } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';

/** Ways that differ by less are the same. */
const SAME_M = 1e-9;

/** Straight distance; 0 where there is no point to come from or go to. */
export function apartM(a: YardPoint | null | undefined, b: YardPoint | null | undefined): number {
  return a == null || b == null ? 0 : distanceM(a, b);
}

/** Of a ring's corners and the feet of both points on its edges, the one with the shortest way between them. */
export function bestOnRing(ring: readonly YardPoint[], from: YardPoint, to: YardPoint): YardPoint {
  let best = ring[0] as YardPoint;
  let bestM = Infinity;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as YardPoint;
    for (const at of from === to
      ? [a, nearestOnEdge(a, b, from)]
      : [a, nearestOnEdge(a, b, from), nearestOnEdge(a, b, to)]) {
      const wayM = apartM(from, at) + apartM(at, to);
      if (wayM >= bestM - SAME_M) continue;
      bestM = wayM;
      best = at;
    }
  });
  return best;
}

/**
 * A ring walked from a point on it round and back to that point.
 *
 * @param walked as laid, or as walked before, when its last point repeats the first
 */
export function ringFrom(walked: readonly YardPoint[], enter: YardPoint): YardPoint[] {
  const isClosed = walked.length > 1 && apartM(walked[0], walked.at(-1)) <= SAME_M;
  const ring = isClosed ? walked.slice(0, -1) : walked;
  let place = 0;
  let nearM = Infinity;
  ring.forEach((a, i) => {
    const offM = distanceToEdgeM(a, ring[(i + 1) % ring.length] as YardPoint, enter);
    if (offM >= nearM) return;
    nearM = offM;
    place = i;
  });
  const after = [...ring.slice(place + 1), ...ring.slice(0, place + 1)];
  return [enter, ...after.filter((point) => apartM(point, enter) > SAME_M), enter];
}
