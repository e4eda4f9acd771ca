import { FOOT_M, type UnitSystem } from '../units/index.ts';

/** What a tape can be read to with a flag in the other hand: half a foot, or a tenth of a metre. */
export function tapeMarkM(units: UnitSystem): number {
  return units === 'us' ? FOOT_M / 2 : 0.1;
}
