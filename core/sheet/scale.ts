import type { UnitSystem } from '../yard.ts';

/** Feet to the inch on an engineer's scale, and the 1:n it is: 1 in = k ft is exactly 1:12k. */
const US_FEET_PER_INCH = [
  1, 2, 3, 4, 5, 10, 20, 30, 40, 50, 60, 100, 200, 300, 400, 500, 600, 1000, 2000, 4000,
] as const;

/** ISO 5455 steps and the in-between ones found on a surveyor's scale rule. */
const METRIC_SCALES = [
  10, 20, 25, 50, 75, 100, 125, 200, 250, 300, 400, 500, 750, 1000, 1250, 2000, 2500, 5000, 10_000, 20_000,
  50_000,
] as const;

/** Drafting scales 1:n of a unit system, largest drawing first. */
export function draftingScales(units: UnitSystem): readonly number[] {
  return units === 'us' ? US_FEET_PER_INCH.map((feet) => feet * 12) : METRIC_SCALES;
}

/** The largest drafting scale at which ground of this size fits the paper box; undefined when none does. */
export function findFittingScale(
  units: UnitSystem,
  groundWidthM: number,
  groundHeightM: number,
  boxWidthMm: number,
  boxHeightMm: number,
): number | undefined {
  return draftingScales(units).find((scale) =>
    fitsAtScale(scale, groundWidthM, groundHeightM, boxWidthMm, boxHeightMm),
  );
}

export function fitsAtScale(
  scale: number,
  groundWidthM: number,
  groundHeightM: number,
  boxWidthMm: number,
  boxHeightMm: number,
): boolean {
  return (groundWidthM * 1000) / scale <= boxWidthMm && (groundHeightM * 1000) / scale <= boxHeightMm;
}

/** '1 in = 10 ft (1:120)' in a US yard when it is a whole number of feet to the inch, else '1:100'. */
export function scaleWords(scale: number, units: UnitSystem): string {
  const feet = scale / 12;
  return units === 'us' && Number.isInteger(feet) ? `1 in = ${feet} ft (1:${scale})` : `1:${scale}`;
}
