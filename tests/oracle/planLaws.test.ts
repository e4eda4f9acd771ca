import { expect, test } from 'vitest';
import { regionsAreaM2 } from '../../core/kernel/index.ts';
import { type GroundPlan, planGround } from '../../core/plan/index.ts';
import type { Region, YardPoint } from '../../core/spaces.ts';
import { expectNear } from '../support/expectNear.ts';
import { planRequest } from '../support/planRequest.ts';
import { randomGround, resolvedOf } from '../support/randomGround.ts';

const SEEDS = [3, 8];

function planned(ground: readonly Region[], loadAreaM2: number, swathM: number): GroundPlan {
  const plan = planGround(resolvedOf({ Yard: ground }), planRequest({ loadAreaM2, swathM }));
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan.value;
}

function scaled(ground: readonly Region[], move: (point: YardPoint) => YardPoint): Region[] {
  return ground.map(({ outer, holes }) => ({ outer: outer.map(move), holes: holes.map((h) => h.map(move)) }));
}

test.each(SEEDS)('laws of a whole plan hold on random yard %i', (seed) => {
  const ground = randomGround(seed, 9, 2);
  const areaM2 = regionsAreaM2(ground);
  const swathM = Math.sqrt(areaM2) / 10;
  const plan = planned(ground, areaM2 / 3, swathM);

  // The whole is the sum of its sections.
  const { coverage } = plan;
  const sumOf = (figure: 'onceM2' | 'twiceM2' | 'missedM2' | 'outsideM2' | 'treatedM2') =>
    coverage.sections.reduce((sum, section) => sum + section[figure], 0);
  expectNear(sumOf('onceM2') + sumOf('twiceM2') + sumOf('missedM2'), areaM2, 1e-6 * areaM2, 'm²'); // the balance
  expectNear(sumOf('outsideM2'), coverage.outsideM2, 1e-9 * areaM2, 'm²'); // the sum
  expect(coverage.treatedM2).toBe(sumOf('treatedM2')); // the sum

  // The same input gives the same bytes.
  expect(JSON.stringify(planned(ground, areaM2 / 3, swathM))).toBe(JSON.stringify(plan)); // the law

  // More capacity never means more loads.
  expect(planned(ground, areaM2 / 2, swathM).loads.length).toBeLessThanOrEqual(plan.loads.length); // the law

  // Twice the size with twice the swath is the same plan in quality, to a tenth of a percent of the ground.
  const large = planned(
    scaled(ground, ({ xM, yM }) => ({ xM: 2 * xM, yM: 2 * yM })),
    (4 * areaM2) / 3,
    2 * swathM,
  ).coverage;
  for (const figure of ['onceM2', 'twiceM2', 'missedM2'] as const) {
    expectNear(large[figure] / large.treatedM2, coverage[figure] / areaM2, 1e-3, ''); // stated tolerance
  }
});
