import { ok, type Result, trouble } from '../result.ts';
import type { YardPoint } from '../spaces.ts';

/**
 * The middle of the arc of a radius between two corners: the point to run an edge through.
 *
 * @param side on which hand the arc bulges for somebody who walks from the first corner to the second
 * @param long the part of the circle that is more than half of it
 * Problems: value/not-positive (the radius, or the distance of the corners), value/radius-below-half-chord
 * Source: the middle stands h = r ∓ √(r² − (c/2)²) off the middle of the chord; the short arc's is taken as
 * (c/2)² / (r + √…), which keeps its digits when the arc is flat
 */
export function arcByRadius(
  from: YardPoint,
  to: YardPoint,
  radiusM: number,
  side: 'left' | 'right',
  long = false,
): Result<YardPoint> {
  const [eastM, northM] = [to.xM - from.xM, to.yM - from.yM];
  const chordM = Math.hypot(eastM, northM);
  if (!(chordM > 0)) return notPositive('distance between the corners');
  if (!(radiusM > 0 && Number.isFinite(radiusM))) return notPositive('radius');
  const halfM = chordM / 2;
  if (radiusM < halfM) {
    const facts = { radiusM, leastM: halfM };
    return trouble({ kind: 'value/radius-below-half-chord', where: { field: 'radius' }, facts });
  }
  const rootM = Math.sqrt((radiusM - halfM) * (radiusM + halfM));
  const bulgeM = long ? radiusM + rootM : (halfM * halfM) / (radiusM + rootM);
  const leftM = side === 'left' ? bulgeM : -bulgeM;
  return ok({
    xM: (from.xM + to.xM) / 2 - (leftM * northM) / chordM,
    yM: (from.yM + to.yM) / 2 + (leftM * eastM) / chordM,
  });
}

function notPositive(field: string): Result<YardPoint> {
  return trouble({ kind: 'value/not-positive', where: { field }, facts: {} });
}
