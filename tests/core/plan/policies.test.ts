import { describe, expect, test } from 'vitest';
import { newJob } from '../../../core/edits/index.ts';
import { comparePolicies, planJob, type PolicyFigures } from '../../../core/plan/index.ts';
import type { Job, Yard } from '../../../core/yard.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { expectNear } from '../../support/expectNear.ts';
import { applicatorWith, productWith } from '../../support/products.ts';

/** A bottle of 1 L at 0.01 L/m² does 100 m². */
function yardWith(job: Partial<Job> = {}): Yard {
  const outlines = [outline('zone', 'front', rect(0, 0, 20, 9)), outline('zone', 'back', rect(30, 0, 30, 9))];
  return {
    ...yardOf({ outlines }),
    products: [productWith({ rateLPerM2: 0.01, mostRateLPerM2: null, leastCarrierLPerM2: null })],
    applicators: [applicatorWith({ kind: 'hose-end', capacityL: 1, carrierLPerM2: 0.1, swathM: 1.8 })],
    jobs: [newJob({ id: 'j', name: 'June', productId: 'p1', applicatorId: 'a1', ...job })],
  };
}

function compared(yard: Yard): readonly PolicyFigures[] {
  const both = comparePolicies(yard, 'j');
  if (!both.ok) throw new Error(JSON.stringify(both.problems));
  return both.value;
}

describe('what each way to share out loads comes to', () => {
  test('is told side by side', () => {
    const [even, fewest] = compared(yardWith());
    expect(even).toMatchObject({ policy: 'even', loads: 5, sections: 5, flags: 6 }); // 180 m² in 2, 270 in 3: 3 cuts
    expectNear(even?.smallestLoadM2 ?? 0, 90, 1, 'm²'); // 180 / 2 and 270 / 3; half a foot of mark times 9 m is 1.4
    expectNear(even?.cutLengthM ?? 0, 27, 0.1, 'm'); // three cuts straight across 9 m
    expect(fewest).toMatchObject({ policy: 'fewest', loads: 5, sections: 6 }); // 450 / 100 rounded up; 2 and 4
    expectNear(fewest?.largestLoadM2 ?? 0, 100, 1.4, 'm²'); // filled, to the nearest mark: half a foot times 9 m
    expectNear((fewest?.unusedM2 ?? 0) + (fewest?.smallestLoadM2 ?? 0), 100, 1e-6, 'm²'); // what the load holds
  });

  test.each(['even', 'fewest'] as const)('is what the plan then has: %s', (policy) => {
    const yard = yardWith({ policy });
    const planned = planJob(yard, 'j');
    if (!planned.ok) throw new Error(planned.problems[0].kind);
    const { loads, sections } = planned.value.ground;
    const figures = compared(yard).find((other) => other.policy === policy);
    expect(figures).toMatchObject({ loads: loads.length, sections: sections.length });
    expect(figures?.smallestLoadM2).toBe(Math.min(...loads.map(({ areaM2 }) => areaM2)));
  });

  test('shows what a held cut costs', () => {
    const heldCuts = [{ id: 'h', zoneId: 'front', from: { xM: 6, yM: 0 }, to: { xM: 6, yM: 9 } }];
    const [even] = compared(yardWith({ heldCuts }));
    expect(even).toMatchObject({ sections: 6, loads: 6 }); // 54 m², 126 in two, 270 in three of 90: none two fit 100
  });

  test('is not told of a job that cannot be planned', () => {
    const none = comparePolicies(yardWith(), 'no such job');
    expect(none.ok ? null : none.problems[0].kind).toBe('value/missing');
    const stopped = comparePolicies(yardWith(), 'j', () => true);
    expect(stopped.ok ? null : stopped.problems[0].kind).toBe('plan/cancelled');
  });
});
