import type { UnitSystem } from '../../core/yard.ts';
import { FOOT_M } from '../../core/units/index.ts';

/** Steps a tape or a ruler would show, in metres, smallest first. */
const METRIC_STEPS_M = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
const US_STEPS_M = [1 / 12, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000].map(
  (ft) => ft * FOOT_M,
);

/** The smallest ruler step that spans at least so much ground. */
export function stepAtLeast(lengthM: number, units: UnitSystem): number {
  const steps = units === 'us' ? US_STEPS_M : METRIC_STEPS_M;
  return steps.find((step) => step >= lengthM) ?? steps[steps.length - 1] ?? lengthM;
}

/** The largest ruler step that spans at most so much ground. */
export function stepAtMost(lengthM: number, units: UnitSystem): number {
  const steps = units === 'us' ? US_STEPS_M : METRIC_STEPS_M;
  return steps.findLast((step) => step <= lengthM) ?? steps[0] ?? lengthM;
}
