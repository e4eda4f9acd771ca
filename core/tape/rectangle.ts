import type { Result } from '../result.ts';
import type { Ring } from '../spaces.ts';
import { type Place, placeRing, requirePositive } from './place.ts';

/**
 * A rectangle. Its length runs from the first corner on the bearing, its width to the left of that.
 *
 * Problems: value/not-positive; shape/ as `checkRing`
 */
export function rectangle(lengthM: number, widthM: number, place: Place): Result<Ring> {
  const sizes = requirePositive({ length: lengthM, width: widthM });
  if (!sizes.ok) return sizes;
  return placeRing('The rectangle', place, [
    { alongM: 0, leftM: 0 },
    { alongM: lengthM, leftM: 0 },
    { alongM: lengthM, leftM: widthM },
    { alongM: 0, leftM: widthM },
  ]);
}
