import { describe, expect, test } from 'vitest';
import { RegionIndex, regionsAreaM2, signedAreaM2, subtractRegions } from '../../../core/kernel/index.ts';
import { lShape, points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomYard, seededRandom } from '../../support/randomYards.ts';

describe('a bed lies clear inside a lawn', () => {
  const lawn = new RegionIndex(region(lShape(20, 20, 10, 10), rect(2, 2, 2, 2)));

  test.each([
    ['in the open', rect(5, 5, 2, 2), true],
    ['across the edge', rect(18, 5, 4, 2), false],
    ['along the edge', rect(18, 5, 2, 2), false],
    ['touching the edge with a corner', points([20, 5], [18, 6], [18, 4]), false],
    ['in the notch', rect(12, 12, 2, 2), false],
    ['outside', rect(30, 30, 2, 2), false],
    ['in the other bed', rect(2.5, 2.5, 1, 1), false],
    ['across the other bed', rect(3, 3, 3, 3), false],
    ['round the other bed', rect(1, 1, 4, 4), false],
    ['from one arm of the L to the other, over the notch', points([5, 15], [15, 5], [16, 6], [6, 16]), false],
  ])('%s', (_name, bed, clear) => {
    expect(lawn.holdsClear(bed)).toBe(clear);
    expect(lawn.holdsClear([...bed].reverse())).toBe(clear);
  });

  test('by less than is asked for, it does not', () => {
    const near = rect(5, 1e-6, 2, 0.5); // a micrometre from the south edge
    expect(lawn.holdsClear(near)).toBe(true);
    expect(lawn.holdsClear(near, 1e-5)).toBe(false);
    expect(lawn.holdsClear(rect(5, 1e-4, 2, 0.5), 1e-5)).toBe(true);
    // A tip against the middle of an edge, and round the other bed's corner.
    expect(lawn.holdsClear(points([20 - 1e-6, 5], [18, 6], [18, 4]), 1e-5)).toBe(false);
    expect(lawn.holdsClear(rect(4 + 1e-6, 4 + 1e-6, 1, 1), 1e-5)).toBe(false);
  });

  test('and then takes away exactly its own area, on random yards', () => {
    let clear = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const yard = randomYard(seededRandom(seed), 20, 8);
      const index = new RegionIndex(region(yard.zone));
      for (const bed of yard.beds.filter((ring) => index.holdsClear(ring))) {
        const leftM2 = regionsAreaM2(subtractRegions([region(yard.zone)], [region(bed)]));
        const wholeM2 = signedAreaM2(yard.zone);
        expectNear(leftM2, wholeM2 - Math.abs(signedAreaM2(bed)), 1e-6 * wholeM2, `m² (seed ${seed})`);
        clear++;
      }
    }
    expect(clear).toBeGreaterThan(50); // enough beds were clear for this to mean something
  });
});

test.each([
  ['beside it', rect(30, 0, 2, 2), true],
  ['in the notch', rect(12, 12, 2, 2), true],
  ['in its hole', rect(2.5, 2.5, 1, 1), true],
  ['touching from outside', rect(20, 2, 2, 2), false],
  ['across the edge', rect(19, 2, 2, 2), false],
  ['whole inside', rect(6, 6, 1, 1), false],
  ['all round it', rect(-1, -1, 40, 40), false],
] as const)('a ring is apart from a lawn: %s', (_name, ring, apart) => {
  const lawn = new RegionIndex(region(lShape(20, 20, 10, 10), rect(2, 2, 2, 2)));
  expect(lawn.isApart(ring)).toBe(apart);
});
