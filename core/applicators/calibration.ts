import {
  type Litres,
  type LitresPerM2,
  litresPerM2,
  type Metres,
  type MetresPerSecond,
  metresPerSecond,
  type SquareMetres,
} from '../units/index.ts';

/** The carrier volume a catch test shows: what was caught in the time the test area takes to walk. */
export function carrierFromCatch(caughtL: Litres, areaM2: SquareMetres): LitresPerM2 {
  return litresPerM2(caughtL / areaM2);
}

/**
 * The flow in litres a second that puts a carrier volume down at a swath and a pace: carrier × swath × pace.
 * Each second a swath's width of ground as long as the pace is covered.
 */
export function flowLPerS(carrierLPerM2: LitresPerM2, swathM: Metres, paceMPerS: MetresPerSecond): number {
  return carrierLPerM2 * swathM * paceMPerS;
}

/** The pace at which a flow puts down a carrier volume: flow ÷ (carrier × swath). */
export function paceForCarrier(
  flowPerSecondL: number,
  swathM: Metres,
  carrierLPerM2: LitresPerM2,
): MetresPerSecond {
  return metresPerSecond(flowPerSecondL / (carrierLPerM2 * swathM));
}
