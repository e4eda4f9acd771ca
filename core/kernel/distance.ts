import type { YardPoint } from '../spaces.ts';

/**
 * Straight distance between two points. By the square root, which every machine rounds alike: `Math.hypot` may differ
 * in the last digit from one to the next, and takes several times as long.
 */
export function distanceM(a: YardPoint, b: YardPoint): number {
  const [dx, dy] = [b.xM - a.xM, b.yM - a.yM];
  return Math.sqrt(dx * dx + dy * dy);
}

/** Length of a walked line, from its first point to its last. */
export function lineLengthM(line: readonly YardPoint[]): number {
  let lengthM = 0;
  line.forEach((to, i) => {
    const from = line[i - 1];
    if (from !== undefined) lengthM += distanceM(from, to);
  });
  return lengthM;
}

/** The place on the edge from `from` to `to` that is nearest to a point; beyond its ends the end itself, exactly. */
export function nearestOnEdge(from: YardPoint, to: YardPoint, point: YardPoint): YardPoint {
  const share = shareAlong(from, to, point);
  if (share <= 0) return from;
  if (share >= 1) return to;
  return { xM: from.xM + share * (to.xM - from.xM), yM: from.yM + share * (to.yM - from.yM) };
}

/** Distance from a point to the edge from `from` to `to`. */
export function distanceToEdgeM(from: YardPoint, to: YardPoint, point: YardPoint): number {
  const share = Math.min(1, Math.max(0, shareAlong(from, to, point)));
  // Taken from the point's offset to `from`, so that far-off coordinates cost no digits.
  const dx = point.xM - from.xM - share * (to.xM - from.xM);
  const dy = point.yM - from.yM - share * (to.yM - from.yM);
  return Math.sqrt(dx * dx + dy * dy);
}

/** How far along an edge the foot of a point lies: 0 at `from`, 1 at `to`; 0 on an edge without length. */
function shareAlong(from: YardPoint, to: YardPoint, point: YardPoint): number {
  const [dx, dy] = [to.xM - from.xM, to.yM - from.yM];
  const length2 = dx * dx + dy * dy;
  return length2 === 0 ? 0 : ((point.xM - from.xM) * dx + (point.yM - from.yM) * dy) / length2;
}
