import { apportionForDisplay, SQUARE_FOOT_M2, type UnitSystem } from '../units/index.ts';
import type { ResolvedYard, ResolvedZone } from './resolved.ts';

/** One zone's areas as shown: treated + left out = turf, turf + cut-outs + owned by other = gross. */
export interface PrintedZone {
  readonly zoneId: string;
  readonly name: string;
  readonly treatedM2: number;
  readonly leftOutM2: number;
  readonly turfM2: number;
  readonly cutOutM2: number;
  readonly ownedByOtherM2: number;
  readonly grossM2: number;
  readonly sigmaM2: number | null;
}

export type PrintedSum = Omit<PrintedZone, 'zoneId' | 'name'>;

/** The last digit an area is shown to: a square foot, or a tenth of a square metre. */
export function areaStepM2(units: UnitSystem): number {
  return units === 'us' ? SQUARE_FOOT_M2 : 0.1;
}

/**
 * Every zone's areas rounded once, for screen and paper alike, so that rows and columns both add up to the last
 * digit shown. Each of the four parts is within one step of its own value; turf and gross are their sums.
 *
 * Source: largest remainder within each column (`apportionForDisplay`)
 */
export function printedZones(resolved: ResolvedYard, units: UnitSystem): readonly PrintedZone[] {
  const { zones } = resolved;
  const column = (areaOf: (zone: ResolvedZone) => number): readonly number[] => {
    // A difference of two overlay areas may come out a hair below nothing.
    const values = zones.map((zone) => Math.max(0, areaOf(zone)));
    return apportionForDisplay(
      values,
      areaStepM2(units),
      values.reduce((sum, value) => sum + value, 0),
    );
  };
  const treated = column((zone) => zone.treatedAreaM2);
  const leftOut = column((zone) => zone.turfAreaM2 - zone.treatedAreaM2);
  const cutOut = column((zone) => zone.cutOutAreaM2);
  const owned = column((zone) => zone.ownedByOtherAreaM2);
  return zones.map(({ zoneId, name, sigmaM2 }, i) => {
    const [treatedM2, leftOutM2] = [treated[i] as number, leftOut[i] as number];
    const [cutOutM2, ownedByOtherM2] = [cutOut[i] as number, owned[i] as number];
    const turfM2 = treatedM2 + leftOutM2;
    const grossM2 = turfM2 + cutOutM2 + ownedByOtherM2;
    return { zoneId, name, treatedM2, leftOutM2, turfM2, cutOutM2, ownedByOtherM2, grossM2, sigmaM2 };
  });
}

/**
 * The sums of zones as shown. No ground is in two zones (overlaps are owned by one), so sums count it once.
 *
 * @returns sigmaM2 null as soon as one zone's is not stated
 * Accuracy: sigmaM2 takes the zones' errors as independent (root of the sum of squares). A corner that two
 * zones share moves area from one to the other, so for zones that touch this overstates the total's sigma.
 */
export function printedSum(zones: readonly PrintedZone[]): PrintedSum {
  const sum = (areaOf: (zone: PrintedZone) => number): number =>
    zones.reduce((total, zone) => total + areaOf(zone), 0);
  const stated = zones.every((zone) => zone.sigmaM2 !== null);
  return {
    treatedM2: sum((zone) => zone.treatedM2),
    leftOutM2: sum((zone) => zone.leftOutM2),
    turfM2: sum((zone) => zone.turfM2),
    cutOutM2: sum((zone) => zone.cutOutM2),
    ownedByOtherM2: sum((zone) => zone.ownedByOtherM2),
    grossM2: sum((zone) => zone.grossM2),
    sigmaM2: stated ? Math.sqrt(sum((zone) => (zone.sigmaM2 ?? 0) ** 2)) : null,
  };
}
