import { tracedRing } from '../curves/index.ts';
import { checkRing } from '../kernel/index.ts';
import { ok, type Result } from '../result.ts';
import type { Traced } from '../yard.ts';
import { type Place, requirePositive } from './place.ts';

/**
 * A circle about the place, kept as a circle.
 *
 * Problems: value/not-positive; shape/ as `checkRing`
 */
export function circle(radiusM: number, place: Place): Result<Traced> {
  const sizes = requirePositive({ radius: radiusM });
  return sizes.ok ? oval('The circle', { kind: 'circle', centre: place.at, radiusM }) : sizes;
}

/**
 * An ellipse about the place, its length on the bearing and its width square to it, kept as an ellipse.
 *
 * Problems: value/not-positive; shape/ as `checkRing`
 */
export function ellipse(lengthM: number, widthM: number, place: Place): Result<Traced> {
  const sizes = requirePositive({ length: lengthM, width: widthM });
  if (!sizes.ok) return sizes;
  const [halfLengthM, halfWidthM] = [lengthM / 2, widthM / 2];
  const { at, bearingDeg } = place;
  return oval('The ellipse', { kind: 'ellipse', centre: at, halfLengthM, halfWidthM, bearingDeg });
}

function oval(name: string, traced: Traced): Result<Traced> {
  const checked = checkRing(tracedRing(traced), '', name);
  return checked.ok ? ok(traced) : checked;
}
