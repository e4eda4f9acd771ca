import { type AreaSpread, sigmaOfSum, timesSpread } from '../area/index.ts';
import { apportionForDisplay, areaStepM2, sum, type UnitSystem } from '../units/index.ts';
import type { ResolvedYard, ResolvedZone } from './resolved.ts';

/** One zone's areas as shown: treated + left out = turf, turf + cut-outs + owned by other = gross. */
export interface PrintedZone {
  readonly zoneId: string;
  readonly name: string;
  readonly treatedM2: number;
  /** Of the treated ground, as it slopes; the map's area where it is level. */
  readonly surfaceM2: number;
  /** What amounts are worked out from: `treatedM2` or `surfaceM2`. */
  readonly amountsM2: number;
  readonly leftOutM2: number;
  readonly turfM2: number;
  readonly cutOutM2: number;
  readonly ownedByOtherM2: number;
  readonly grossM2: number;
  readonly sigmaM2: number | null;
  /** One standard deviation of `amountsM2`; null as `sigmaM2`. */
  readonly amountsSigmaM2: number | null;
  readonly spread: AreaSpread;
  readonly amountFactor: number;
}

export type PrintedAreas = Omit<PrintedZone, 'zoneId' | 'name' | 'spread' | 'amountFactor'>;

export interface PrintedSum extends PrintedAreas {
  /** What the zones cover together: gross less what is in more than one of them, turf and what is cut out of it. */
  readonly groundM2: number;
}

/**
 * Every zone's areas rounded once, for screen and paper alike, so that rows and columns both add up to the last
 * digit shown. The sums of gross and of treated ground are the nearest rounding of their true values; each part
 * of a zone is within one step of its own value, and turf and gross are the sums of their parts. A surface is the
 * nearest rounding of its treated ground as shown times the factor, so that level ground shows one figure twice.
 *
 * Source: largest remainder (`apportionForDisplay`), first among the columns' sums, then within each column.
 * Worked out ourselves: with G and T the rounded sums of gross and treated, the other three columns share G - T,
 * which is their true sum rounded up or down, since |(G - T) - (g - t)| < 1 step.
 */
export function printedZones(resolved: ResolvedYard, units: UnitSystem): readonly PrintedZone[] {
  const { zones } = resolved;
  const step = areaStepM2(units);
  // A difference of two overlay areas may come out a hair below nothing.
  const valuesOf = (areaOf: (zone: ResolvedZone) => number): readonly number[] =>
    zones.map((zone) => Math.max(0, areaOf(zone)));
  const treatedValues = valuesOf((zone) => zone.treatedAreaM2);
  const restValues = [
    valuesOf((zone) => zone.turfAreaM2 - zone.treatedAreaM2),
    valuesOf((zone) => zone.cutOutAreaM2),
    valuesOf((zone) => zone.ownedByOtherAreaM2),
  ];
  const restSums = restValues.map(sum);
  const treatedSum = nearest(sum(treatedValues), step);
  const grossSum = nearest(sum(treatedValues) + sum(restSums), step);
  const shownSums = apportionForDisplay(restSums, step, grossSum - treatedSum);
  const treated = apportionForDisplay(treatedValues, step, treatedSum);
  const [leftOut, cutOut, owned] = restValues.map((values, i) =>
    apportionForDisplay(values, step, shownSums[i] as number),
  ) as [number[], number[], number[]];
  return zones.map(({ zoneId, name, sigmaM2, spread, surfaceFactor, amountFactor }, i) => {
    const [treatedM2, leftOutM2] = [treated[i] as number, leftOut[i] as number];
    const [cutOutM2, ownedByOtherM2] = [cutOut[i] as number, owned[i] as number];
    const timesFactor = (factor: number): number =>
      factor === 1 ? treatedM2 : nearest(treatedM2 * factor, step);
    const [surfaceM2, amountsM2] = [timesFactor(surfaceFactor), timesFactor(amountFactor)];
    const turfM2 = treatedM2 + leftOutM2;
    const grossM2 = turfM2 + cutOutM2 + ownedByOtherM2;
    return {
      zoneId,
      name,
      treatedM2,
      surfaceM2,
      amountsM2,
      leftOutM2,
      turfM2,
      cutOutM2,
      ownedByOtherM2,
      grossM2,
      sigmaM2,
      amountsSigmaM2: sigmaM2 === null ? null : sigmaM2 * amountFactor,
      spread,
      amountFactor,
    };
  });
}

/**
 * The sums of zones as shown. No ground is in two zones (overlaps are owned by one), so sums count it once.
 *
 * @returns sigmaM2 of the sum of what is treated, null as soon as one zone's is not stated. A corner that two zones
 * share moves area from one to the other, and the scale of a picture is wrong for all zones alike: both are counted.
 */
export function printedSum(zones: readonly PrintedZone[]): PrintedSum {
  const sumOf = (areaOf: (zone: PrintedZone) => number): number => sum(zones.map(areaOf));
  const [grossM2, ownedByOtherM2] = [sumOf((zone) => zone.grossM2), sumOf((zone) => zone.ownedByOtherM2)];
  return {
    groundM2: grossM2 - ownedByOtherM2,
    treatedM2: sumOf((zone) => zone.treatedM2),
    surfaceM2: sumOf((zone) => zone.surfaceM2),
    amountsM2: sumOf((zone) => zone.amountsM2),
    leftOutM2: sumOf((zone) => zone.leftOutM2),
    turfM2: sumOf((zone) => zone.turfM2),
    cutOutM2: sumOf((zone) => zone.cutOutM2),
    ownedByOtherM2,
    grossM2,
    sigmaM2: sigmaOfSum(zones.map(({ spread }) => spread)),
    amountsSigmaM2: sigmaOfSum(zones.map(({ spread, amountFactor }) => timesSpread(spread, amountFactor))),
  };
}

function nearest(value: number, step: number): number {
  return Math.round(value / step) * step;
}
