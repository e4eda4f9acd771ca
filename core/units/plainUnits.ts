import { FOOT_M, SQUARE_FOOT_M2 } from './constants.ts';
import type { UnitSystem } from './unitSystem.ts';

/** A foot or a metre: what workings count lengths in, without inches or centimetres. */
export function lengthUnitM(units: UnitSystem): number {
  return units === 'us' ? FOOT_M : 1;
}

/** A square foot or a square metre: what areas are shown and worked in. */
export function areaUnitM2(units: UnitSystem): number {
  return units === 'us' ? SQUARE_FOOT_M2 : 1;
}

/** The last digit an area is shown to: a square foot, or a tenth of a square metre. */
export function areaStepM2(units: UnitSystem): number {
  return units === 'us' ? SQUARE_FOOT_M2 : 0.1;
}
