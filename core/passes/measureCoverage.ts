import {
  coveredTwice,
  intersectRegions,
  regionsAreaM2,
  subtractRegions,
  unionRegions,
} from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import type { Coverage, Pass } from './pass.ts';
import { passSwaths } from './passSwaths.ts';

/**
 * What the passes treat, by overlaying their swaths on the ground: never by adding lengths up.
 *
 * Missed is the ground less all swaths, outside all swaths less the ground, twice the ground under two or more
 * swath pieces; once is the rest, so that once + twice + missed = treated always.
 *
 * @param treated regions that do not overlap
 * Accuracy: swath edges times the kernel grid, and 1 mm at round joins; checked against counting points on a
 *   grid in tests/oracle/coverage.test.ts
 * Cost: n log n in swath corners and crossings
 */
export function measureCoverage(
  treated: readonly Region[],
  passes: readonly Pick<Pass, 'line'>[],
  swathM: number,
): Coverage {
  const swaths = passes.flatMap((pass) => passSwaths(pass.line, swathM));
  const reached = unionRegions(swaths);
  const missed = subtractRegions(treated, reached);
  const outside = subtractRegions(reached, treated);
  const treatedM2 = regionsAreaM2(treated);
  const missedM2 = regionsAreaM2(missed);
  const deep = coveredTwice(swaths);
  // Deep ground less its part outside, which is small: far quicker than overlaying it on the ground itself.
  const twiceM2 = regionsAreaM2(deep) - regionsAreaM2(intersectRegions(deep, outside));
  const onceM2 = treatedM2 - missedM2 - twiceM2;
  return { treatedM2, onceM2, twiceM2, missedM2, outsideM2: regionsAreaM2(outside), missed, outside };
}
