import type { Result } from '../result.ts';
import type { Ring } from '../spaces.ts';
import { type Place, placeRing, requirePositive } from './place.ts';

/** The drawn edge is nowhere farther than this from the true curve, in metres: less than a tape can be read to. */
const MOST_OFF_CURVE_M = 0.002;
/** Fewer corners look like a nut, whatever the size. */
const LEAST_CORNERS = 24;

/** A circle about the place; its first corner lies on the bearing. Otherwise as `ellipse`. */
export function circle(radiusM: number, place: Place): Result<Ring> {
  const sizes = requirePositive({ radius: radiusM });
  return sizes.ok ? oval('The circle', radiusM, radiusM, place) : sizes;
}

/**
 * An ellipse about the place, its length on the bearing and its width square to it.
 *
 * Problems: value/not-positive; shape/ as `checkRing`
 * Accuracy: edge within 2 mm of the curve; area that of the curve but for rounding (relative 1e-12)
 * Source: worked out here. A polygon with its n corners on a circle is short of area by (2π/n)²/6 of it, so
 * 811 corners would be needed for 1e-5. Instead the corners stand a little outside, at k times the radius, so
 * that the polygon holds exactly the area of the curve: ½ n k² r² sin(2π/n) = π r² gives k² = t / sin t with
 * t = 2π/n. The corners are then (k − 1) r ≈ r t²/12 outside and the middles of the sides half as much inside.
 * Stretched to an ellipse, areas keep their ratio, and a point at k times a point of the curve is at most
 * (k − 1) × the longer half axis from it, so n is chosen by that.
 */
export function ellipse(lengthM: number, widthM: number, place: Place): Result<Ring> {
  const sizes = requirePositive({ length: lengthM, width: widthM });
  return sizes.ok ? oval('The ellipse', lengthM / 2, widthM / 2, place) : sizes;
}

function oval(name: string, halfAlongM: number, halfAcrossM: number, place: Place): Result<Ring> {
  const corners = cornersFor(Math.max(halfAlongM, halfAcrossM));
  const k = outsideBy(corners);
  const points = Array.from({ length: corners }, (_, i) => {
    const turnRad = (2 * Math.PI * i) / corners;
    return { alongM: k * halfAlongM * Math.cos(turnRad), leftM: k * halfAcrossM * Math.sin(turnRad) };
  });
  return placeRing(name, place, points);
}

/** A multiple of four, so that the ends of both axes are corners. */
function cornersFor(halfM: number): number {
  const byCurve = 2 * Math.PI * Math.sqrt(halfM / (12 * MOST_OFF_CURVE_M));
  // A radius far beyond any yard is turned away by the kernel's check, not by a ring of a million corners.
  let corners = 4 * Math.ceil(Math.min(Math.max(byCurve, LEAST_CORNERS), 10_000) / 4);
  // The estimate leaves out terms of t⁴ and above.
  if ((outsideBy(corners) - 1) * halfM > MOST_OFF_CURVE_M) corners += 4;
  return corners;
}

function outsideBy(corners: number): number {
  const t = (2 * Math.PI) / corners;
  return Math.sqrt(t / Math.sin(t));
}
