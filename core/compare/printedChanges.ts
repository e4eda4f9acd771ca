import { apportionForDisplay, areaStepM2, sum, type UnitSystem } from '../units/index.ts';
import type { AreaChange } from './comparison.ts';

/** Areas of a change as shown: before - lost + gained = after, to the last digit. */
export type PrintedChange = Omit<AreaChange, 'unchangedM2'>;

/** Ground less than this part of the last digit shown is what the overlay's grid leaves, and shown as none. */
const NOTHING = 1e-3;

/**
 * Changes rounded once, so that rows and columns both add up to the last digit shown. What is there now is shown as it
 * is everywhere else; lost and gained are within one step of their own values and the nearest in sum; none stays
 * none. What was there before is what these leave it to be, and may be a step or two off what its own file shows:
 * something has to give, and it is the figure that stands nowhere else on the screen.
 *
 * @param shownAfterM2 of each change the later area as it is shown elsewhere, whole steps
 * Source: largest remainder (`apportionForDisplay`) within the columns lost and gained
 */
export function printedChanges(
  changes: readonly AreaChange[],
  shownAfterM2: readonly number[],
  units: UnitSystem,
): readonly PrintedChange[] {
  const step = areaStepM2(units);
  const isNothing = (areaM2: number): boolean => areaM2 < NOTHING * step;
  const column = (areaOf: (change: AreaChange) => number): readonly number[] => {
    const areas = changes.map(areaOf).map((areaM2) => (isNothing(areaM2) ? 0 : areaM2));
    return apportionForDisplay(areas, step, sum(areas));
  };
  const lost = column((change) => change.lostM2);
  const gained = column((change) => change.gainedM2);
  return changes.map(({ unchangedM2 }, i) => {
    const [lostM2 = 0, afterM2 = 0] = [lost[i], shownAfterM2[i]];
    // All of it is new, or as good as all: no more can be new than there is, nor can there be ground before.
    const gainedM2 = isNothing(unchangedM2) ? afterM2 : Math.min(gained[i] ?? 0, afterM2);
    return { beforeM2: afterM2 - gainedM2 + lostM2, lostM2, gainedM2, afterM2 };
  });
}

/** An area by itself as it is shown: the nearest whole step. */
export function shownAloneM2(areaM2: number, units: UnitSystem): number {
  const step = areaStepM2(units);
  return Math.round(areaM2 / step) * step;
}

/** The sums of shown changes. */
export function printedChangeSum(changes: readonly PrintedChange[]): PrintedChange {
  const sumOf = (areaOf: (change: PrintedChange) => number): number => sum(changes.map(areaOf));
  return {
    beforeM2: sumOf((change) => change.beforeM2),
    lostM2: sumOf((change) => change.lostM2),
    gainedM2: sumOf((change) => change.gainedM2),
    afterM2: sumOf((change) => change.afterM2),
  };
}
