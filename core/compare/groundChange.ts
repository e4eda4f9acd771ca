import { regionsAreaM2, splitRegions, subtractRegions } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import { sum } from '../units/index.ts';
import type { AreaChange, GroundChange } from './comparison.ts';
import { setAsideCommon } from './setAsideCommon.ts';

/**
 * What became of some ground.
 *
 * @param before, after each without overlap in itself
 * Accuracy: perimeter times the kernel grid. Before, after, lost, gained and what of both is unchanged are measured each on
 * its own, so that before = unchanged + lost and after = unchanged + gained are a check and not a definition.
 * Cost: two overlays of what is not the very same in both
 */
export function groundChange(before: readonly Region[], after: readonly Region[]): GroundChange {
  const differing = setAsideCommon(before, after);
  const { inside, outside: lost } = splitRegions(differing.before, differing.after);
  const gained = subtractRegions(differing.after, differing.before);
  return {
    beforeM2: regionsAreaM2(before),
    lostM2: regionsAreaM2(lost),
    gainedM2: regionsAreaM2(gained),
    unchangedM2: regionsAreaM2(inside) + differing.commonM2,
    afterM2: regionsAreaM2(after),
    lost,
    gained,
  };
}

/** Changes of ground that does not overlap, together. */
export function sumOfChanges(changes: readonly AreaChange[]): AreaChange {
  const sumOf = (areaOf: (change: AreaChange) => number): number => sum(changes.map(areaOf));
  return {
    beforeM2: sumOf((change) => change.beforeM2),
    lostM2: sumOf((change) => change.lostM2),
    gainedM2: sumOf((change) => change.gainedM2),
    unchangedM2: sumOf((change) => change.unchangedM2),
    afterM2: sumOf((change) => change.afterM2),
  };
}
