import { orient2d } from 'robust-predicates';
import { ok, type Result, trouble } from '../result.ts';
import type { Ring, YardPoint } from '../spaces.ts';
import { findCrossing } from './crossing.ts';
import { ringBounds, signedAreaM2 } from './measure.ts';

/** Largest coordinate, in metres from the yard's origin, that the kernel grid is made for. */
export const MOST_REACH_M = 10_000;
/** An outline smaller than a square centimetre is a slip of the hand. */
const LEAST_AREA_M2 = 1e-4;

/**
 * Whether a ring can stand for ground.
 *
 * @param outlineId, name go into the problem's `where`
 * Problems: shape/not-finite, shape/too-few-points (fewer than three different corners), shape/too-large,
 * shape/self-crossing with the crossing point, shape/zero-area
 */
export function checkRing(ring: Ring, outlineId: string, name: string): Result<Ring> {
  const where = { outlineId, name };
  if (!ring.every(({ xM, yM }) => Number.isFinite(xM) && Number.isFinite(yM))) {
    return trouble({ kind: 'shape/not-finite', where, facts: {} });
  }
  const points = differentPoints(ring);
  if (points < 3) return trouble({ kind: 'shape/too-few-points', where, facts: { points } });
  const { minXM, minYM, maxXM, maxYM } = ringBounds(ring);
  const reachM = Math.max(-minXM, -minYM, maxXM, maxYM);
  // A frame that reaches this far from its middle to one side is meant for twice that.
  if (reachM > MOST_REACH_M)
    return trouble({ kind: 'shape/too-large', where, facts: { extentM: 2 * reachM } });
  // Before the crossings: corners on one line run back over themselves, but what ails them is that they hold no ground.
  if (onOneLine(ring)) return trouble({ kind: 'shape/zero-area', where, facts: {} });
  const crossing = findCrossing(ring);
  if (crossing !== undefined) {
    return trouble({ kind: 'shape/self-crossing', where: { ...where, at: crossing }, facts: { crossing } });
  }
  if (Math.abs(signedAreaM2(ring)) < LEAST_AREA_M2) {
    return trouble({ kind: 'shape/zero-area', where, facts: {} });
  }
  return ok(ring);
}

/** How many different corners there are, as far as three: more need not be told apart. */
function differentPoints(ring: Ring): number {
  const found: YardPoint[] = [];
  for (const corner of ring) {
    if (found.length === 3) break;
    if (!found.some(({ xM, yM }) => xM === corner.xM && yM === corner.yM)) found.push(corner);
  }
  return found.length;
}

function onOneLine(ring: Ring): boolean {
  const from = ring[0] as YardPoint;
  const to = ring.find(({ xM, yM }) => xM !== from.xM || yM !== from.yM) as YardPoint;
  return ring.every(({ xM, yM }) => orient2d(from.xM, from.yM, to.xM, to.yM, xM, yM) === 0);
}
