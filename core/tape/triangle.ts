import type { Result } from '../result.ts';
import type { Ring } from '../spaces.ts';
import { meeting } from './meeting.ts';
import { type Place, placeRing, requirePositive, type TapePoint } from './place.ts';

/**
 * A triangle by its three sides in walking order. The first runs from the first corner on the bearing; the
 * third corner lies to its left.
 *
 * Problems: value/not-positive, value/tapes-do-not-meet; shape/ as `checkRing`
 */
export function triangleBySides(firstM: number, secondM: number, thirdM: number, place: Place): Result<Ring> {
  const sizes = requirePositive({ 'first side': firstM, 'second side': secondM, 'third side': thirdM });
  if (!sizes.ok) return sizes;
  const tip = meeting('third corner', firstM, thirdM, secondM);
  return tip.ok ? standing(firstM, tip.value, place) : tip;
}

/**
 * A triangle by its base and the height square to it. Where the height stands changes the corners and not
 * the area.
 *
 * @param footM how far along the base the height stands, either sign; null = at its middle
 * Problems: value/not-positive; shape/ as `checkRing`
 */
export function triangleByHeight(
  baseM: number,
  heightM: number,
  footM: number | null,
  place: Place,
): Result<Ring> {
  const sizes = requirePositive({ base: baseM, height: heightM });
  if (!sizes.ok) return sizes;
  return standing(baseM, { alongM: footM ?? baseM / 2, leftM: heightM }, place);
}

function standing(baseM: number, tip: TapePoint, place: Place): Result<Ring> {
  return placeRing('The triangle', place, [{ alongM: 0, leftM: 0 }, { alongM: baseM, leftM: 0 }, tip]);
}
