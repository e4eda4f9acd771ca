import { describe, expect, test } from 'vitest';
import { cutSides } from '../../../core/sections/cutSides.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

describe('what a cut leaves on both sides', () => {
  const lawn = region(rect(0, 0, 10, 6));
  const at = (xM: number) => ({ from: { xM, yM: 0 }, to: { xM, yM: 6 } });

  test('is its ground and its loads; together the whole', () => {
    const sides = cutSides(lawn, at(4), 12);
    expectNear(sides?.left.areaM2 ?? Number.NaN, 24, 1e-9, 'm²'); // 4 × 6 by hand
    expectNear(sides?.right.areaM2 ?? Number.NaN, 36, 1e-9, 'm²'); // 6 × 6 by hand
    expect([sides?.left.loads, sides?.right.loads, sides?.moreLoads]).toEqual([2, 3, 0]);
  });

  test('says how many loads the place of the cut costs', () => {
    // 27 m² and 33 m² are 3 loads of 12 each; the whole 60 m² are 5.
    const sides = cutSides(lawn, at(4.5), 12);
    expect([sides?.left.loads, sides?.right.loads, sides?.moreLoads]).toEqual([3, 3, 1]);
  });

  test('is nothing where the line parts nothing', () => {
    expect(cutSides(lawn, at(12), 12)).toBeUndefined();
  });
});
