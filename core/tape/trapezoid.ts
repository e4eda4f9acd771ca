import type { Result } from '../result.ts';
import type { Ring } from '../spaces.ts';
import { type Place, placeRing, requirePositive } from './place.ts';

export interface TrapezoidSizes {
  readonly firstSideM: number;
  readonly farSideM: number;
  /** Square across, from the first side to the far one. */
  readonly acrossM: number;
  /** How far along the first side the far one begins, either sign; null = as much at both ends. */
  readonly farStartM: number | null;
}

/**
 * A figure with two parallel sides. The first runs from the first corner on the bearing, the far one lies to
 * its left. Where the far side begins changes the corners and not the area.
 *
 * Problems: value/not-positive; shape/ as `checkRing`
 */
export function trapezoid(sizes: TrapezoidSizes, place: Place): Result<Ring> {
  const { firstSideM, farSideM, acrossM } = sizes;
  const positive = requirePositive({ 'first side': firstSideM, 'far side': farSideM, across: acrossM });
  if (!positive.ok) return positive;
  const farStartM = sizes.farStartM ?? (firstSideM - farSideM) / 2;
  return placeRing('The trapezoid', place, [
    { alongM: 0, leftM: 0 },
    { alongM: firstSideM, leftM: 0 },
    { alongM: farStartM + farSideM, leftM: acrossM },
    { alongM: farStartM, leftM: acrossM },
  ]);
}
