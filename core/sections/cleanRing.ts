import { distanceM } from '../kernel/index.ts';
import type { Ring, YardPoint } from '../spaces.ts';

/** Corners nearer than this are one. */
const SAME_POINT_M = 1e-9;

/** Drops repeated corners, and spikes where a cut ran back along an edge. */
export function cleanRing(ring: Ring): Ring {
  const kept: YardPoint[] = [];
  for (const point of ring) {
    kept.push(point);
    while (kept.length > 1 && dropsLast(kept));
  }
  let before = -1;
  while (kept.length > 2 && before !== kept.length) {
    before = kept.length;
    if (isSame(kept[0] as YardPoint, kept.at(-1) as YardPoint)) kept.pop();
    else if (isSpike(kept.at(-2), kept.at(-1), kept[0])) kept.pop();
    else if (isSpike(kept.at(-1), kept[0], kept[1])) kept.shift();
  }
  return kept;
}

/** Takes one needless corner off the end of a growing ring, if there is one. */
function dropsLast(kept: YardPoint[]): boolean {
  const last = kept.at(-1) as YardPoint;
  if (isSame(kept.at(-2) as YardPoint, last)) {
    kept.pop();
    return true;
  }
  if (!isSpike(kept.at(-3), kept.at(-2), last)) return false;
  kept.splice(-2, 1);
  return true;
}

function isSame(a: YardPoint, b: YardPoint): boolean {
  return distanceM(a, b) <= SAME_POINT_M;
}

function isSpike(a: YardPoint | undefined, b: YardPoint | undefined, c: YardPoint | undefined): boolean {
  if (a === undefined || b === undefined || c === undefined) return false;
  const inX = b.xM - a.xM;
  const inY = b.yM - a.yM;
  const outX = c.xM - b.xM;
  const outY = c.yM - b.yM;
  const along = inX * outX + inY * outY;
  const reach = Math.hypot(inX, inY) * Math.hypot(outX, outY);
  return (
    along < 0 &&
    Math.abs(inX * outY - inY * outX) <= SAME_POINT_M * Math.sqrt(reach) &&
    -along > 0.999 * reach
  );
}
