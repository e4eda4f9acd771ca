import { apportionForDisplay, type UnitSystem } from '../units/index.ts';
import { areaStepM2 } from '../zones/index.ts';
import type { AreaChange } from './comparison.ts';

/** Areas of a change as shown: before - lost + gained = after, to the last digit. */
export type PrintedChange = Omit<AreaChange, 'unchangedM2'>;

/** Ground less than this part of the last digit shown is what the overlay's grid leaves, and shown as none. */
const NOTHING = 1e-3;

/**
 * Changes rounded once, so that rows and columns both add up to the last digit shown. The sums of before and of after are
 * the nearest rounding of their true values; every other figure is within two steps of its own; none stays none.
 *
 * @param changes of ground that does not overlap, whose sum may be shown under them
 * Source: largest remainder (`apportionForDisplay`) within the columns unchanged, lost and gained, as `printedZones`
 * has it. With B, A and U the rounded sums of before, after and unchanged, B - U is the sum of lost rounded up or
 * down, since |(B - U) - (b - u)| < 1 step; so is A - U that of gained.
 */
export function printedChanges(changes: readonly AreaChange[], units: UnitSystem): readonly PrintedChange[] {
  const step = areaStepM2(units);
  const column = (areaOf: (change: AreaChange) => number): readonly number[] =>
    changes.map(areaOf).map((areaM2) => (areaM2 < NOTHING * step ? 0 : areaM2));
  const unchanged = column((change) => change.unchangedM2);
  const lost = column((change) => change.lostM2);
  const gained = column((change) => change.gainedM2);
  const nearest = (...columns: (readonly number[])[]): number =>
    Math.round(columns.flat().reduce((sumM2, areaM2) => sumM2 + areaM2, 0) / step) * step;
  const unchangedSum = nearest(unchanged);
  const shown = {
    unchanged: apportionForDisplay(unchanged, step, unchangedSum),
    lost: apportionForDisplay(lost, step, nearest(unchanged, lost) - unchangedSum),
    gained: apportionForDisplay(gained, step, nearest(unchanged, gained) - unchangedSum),
  };
  return changes.map((_, i) => {
    const [keptM2, lostM2, gainedM2] = [shown.unchanged[i] ?? 0, shown.lost[i] ?? 0, shown.gained[i] ?? 0];
    return { beforeM2: keptM2 + lostM2, lostM2, gainedM2, afterM2: keptM2 + gainedM2 };
  });
}

/** The sums of shown changes. */
export function printedChangeSum(changes: readonly PrintedChange[]): PrintedChange {
  const sumOf = (areaOf: (change: PrintedChange) => number): number =>
    changes.reduce((sumM2, change) => sumM2 + areaOf(change), 0);
  return {
    beforeM2: sumOf((change) => change.beforeM2),
    lostM2: sumOf((change) => change.lostM2),
    gainedM2: sumOf((change) => change.gainedM2),
    afterM2: sumOf((change) => change.afterM2),
  };
}
