import type { Ring, YardPoint } from '../spaces.ts';
import { LEAST_PER_TURN, MOST_CHORDS, MOST_OFF_CURVE_M, soundCount } from './offCurve.ts';

/** A circle or an ellipse: its two half axes, the first on a compass bearing. */
export interface Oval {
  readonly centre: YardPoint;
  readonly halfAlongM: number;
  readonly halfAcrossM: number;
  readonly bearingDeg: number;
}

/** Far beyond what the kernel takes, so that no size makes a corner that is not a number. */
const MOST_HALF_M = 1e9;

/** A corner of an oval: how far out along its length and to the left of it. */
export interface OvalCorner {
  /** In half lengths. */
  readonly along: number;
  /** In half widths. */
  readonly left: number;
}

/**
 * The ring of an ellipse, counter-clockwise from the end of its length. A size that cannot be one (`figureProblems`)
 * leaves no ground: all corners at the centre.
 *
 * Accuracy: edge within 2 mm of the curve; area that of the curve but for rounding (relative 1e-12)
 * Source: worked out here. A polygon with its n corners on a circle is short of area by (2π/n)²/6 of it, so
 * 811 corners would be needed for 1e-5. Instead the corners stand a little outside, at k times the radius, so
 * that the polygon holds exactly the area of the curve: ½ n k² r² sin(2π/n) = π r² gives k² = t / sin t with
 * t = 2π/n. The corners are then (k − 1) r ≈ r t²/12 outside and the middles of the sides half as much inside.
 * Stretched to an ellipse, areas keep their ratio, and a point at k times a point of the curve is at most
 * (k − 1) × the longer half axis from it, so n is chosen by that.
 */
export function ovalRing(oval: Oval): Ring {
  const [alongM, acrossM] = [sizeOf(oval.halfAlongM), sizeOf(oval.halfAcrossM)];
  const { east, north } = directionOf(oval.bearingDeg);
  return ovalCorners(oval).map(({ along, left }) => ({
    xM: oval.centre.xM + along * alongM * east - left * acrossM * north,
    yM: oval.centre.yM + along * alongM * north + left * acrossM * east,
  }));
}

/** Where the corners of `ovalRing` stand in the oval's own axes. */
export function ovalCorners({ halfAlongM, halfAcrossM }: Oval): readonly OvalCorner[] {
  const corners = cornersFor(Math.max(sizeOf(halfAlongM), sizeOf(halfAcrossM)));
  const k = outsideBy(corners);
  return Array.from({ length: corners }, (_, i) => {
    const turnRad = (2 * Math.PI * i) / corners;
    return { along: k * Math.cos(turnRad), left: k * Math.sin(turnRad) };
  });
}

export function directionOf(bearingDeg: number): { readonly east: number; readonly north: number } {
  // Whole turns go first: the product of a bearing beyond all sense would be no number.
  const bearingRad = ((bearingDeg % 360) * Math.PI) / 180;
  return { east: Math.sin(bearingRad), north: Math.cos(bearingRad) };
}

function sizeOf(halfM: number): number {
  return halfM > 0 ? Math.min(halfM, MOST_HALF_M) : 0;
}

/** A multiple of four, so that the ends of both axes are corners. */
function cornersFor(halfM: number): number {
  const byCurve = 2 * Math.PI * Math.sqrt(halfM / (12 * MOST_OFF_CURVE_M));
  let corners = 4 * Math.ceil(soundCount(Math.max(byCurve, LEAST_PER_TURN)) / 4);
  // The estimate leaves out terms of t⁴ and above.
  if (byCurve <= MOST_CHORDS && (outsideBy(corners) - 1) * halfM > MOST_OFF_CURVE_M) corners += 4;
  return corners;
}

function outsideBy(corners: number): number {
  const t = (2 * Math.PI) / corners;
  return Math.sqrt(t / Math.sin(t));
}
