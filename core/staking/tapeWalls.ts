import { outlineRings } from '../curves/index.ts';
import { distanceM, distanceToEdgeM, regionContains, ringBounds, boxesMeet } from '../kernel/index.ts';
import type { Ring, YardPoint } from '../spaces.ts';
import type { Outline } from '../yard.ts';

/** Whether a tape between two places would have to go through a house. */
export type IsBlocked = (from: YardPoint, to: YardPoint) => boolean;

/** A tape may lie along a wall, or touch a corner: this far inside is through it. */
const INSIDE_M = 0.05;

/** Buildings stop a tape and a sight line; beds and water are reached over. */
export function tapeWalls(outlines: readonly Outline[]): IsBlocked {
  const walls = outlines
    .filter(({ kind }) => kind === 'building')
    .map((outline) => outlineRings(outline)[0] as Ring)
    .map((ring) => ({ ring, bounds: ringBounds(ring) }));
  return (from, to) => {
    const box = ringBounds([from, to]);
    return walls.some(({ ring, bounds }) => boxesMeet(box, bounds) && goesThrough(ring, from, to));
  };
}

/** Between two crossings of the walls a tape is inside or outside as its middle is. */
function goesThrough(ring: Ring, from: YardPoint, to: YardPoint): boolean {
  const shares = [0, ...crossingShares(ring, from, to), 1].sort((a, b) => a - b);
  const lengthM = distanceM(from, to);
  return shares.some((share, i) => {
    const next = shares[i + 1];
    if (next === undefined || (next - share) * lengthM < 2 * INSIDE_M) return false;
    const middle = (share + next) / 2;
    const at = { xM: from.xM + (to.xM - from.xM) * middle, yM: from.yM + (to.yM - from.yM) * middle };
    if (!regionContains({ outer: ring, holes: [] }, at)) return false;
    return ring.every((a, j) => distanceToEdgeM(a, ring[(j + 1) % ring.length] as YardPoint, at) > INSIDE_M);
  });
}

function crossingShares(ring: Ring, from: YardPoint, to: YardPoint): number[] {
  const [x, y] = [to.xM - from.xM, to.yM - from.yM];
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] as YardPoint;
    const [ex, ey] = [b.xM - a.xM, b.yM - a.yM];
    const turn = x * ey - y * ex;
    if (turn === 0) return [];
    const share = ((a.xM - from.xM) * ey - (a.yM - from.yM) * ex) / turn;
    const alongEdge = ((a.xM - from.xM) * y - (a.yM - from.yM) * x) / turn;
    return share > 0 && share < 1 && alongEdge >= 0 && alongEdge <= 1 ? [share] : [];
  });
}
