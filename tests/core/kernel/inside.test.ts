import { describe, expect, test } from 'vitest';
import { interiorPoint, regionContains } from '../../../core/kernel/index.ts';
import { lShape, points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomStar, seededRandom } from '../../support/randomYards.ts';

test('a lawn holds its ground and its edges, not its beds', () => {
  const lawn = region(rect(0, 0, 10, 10), rect(4, 4, 2, 2));
  expect(regionContains(lawn, { xM: 1, yM: 1 })).toBe(true);
  expect(regionContains(lawn, { xM: 5, yM: 5 })).toBe(false); // in the bed
  expect(regionContains(lawn, { xM: 4, yM: 5 })).toBe(true); // on the bed's edge
  expect(regionContains(lawn, { xM: 0, yM: 5 })).toBe(true); // on the outer edge
  expect(regionContains(lawn, { xM: 11, yM: 5 })).toBe(false);
});

test('a point in the notch of an L is outside it', () => {
  const ell = region(lShape(10, 10, 4, 4));
  expect(regionContains(ell, { xM: 8, yM: 8 })).toBe(false); // the notch is 6 to 10 m both ways
  expect(regionContains(ell, { xM: 8, yM: 4 })).toBe(true);
  expect(regionContains(ell, { xM: 3, yM: 8 })).toBe(true);
});

describe('the place for a label', () => {
  test('is the middle of a square', () => {
    const { xM, yM } = interiorPoint(region(rect(0, 0, 10, 10)));
    expectNear(xM, 5, 0.1, 'm'); // middle; the search stops within 1 % of the side
    expectNear(yM, 5, 0.1, 'm');
  });

  test('is in the wide arm of an L, not in its notch', () => {
    const place = interiorPoint(region(lShape(20, 20, 14, 14)));
    // The roomiest circle touches both outer edges and the inner corner (6, 6): r = 6 (2 - √2) from the sides.
    const r = 6 * (2 - Math.SQRT2);
    expectNear(Math.min(place.xM, place.yM), r, 0.2, 'm'); // within 1 % of the 20 m box
  });

  test('is beside a bed that takes the middle', () => {
    const lawn = region(rect(0, 0, 30, 10), rect(12, 1, 8, 8));
    const place = interiorPoint(lawn);
    expect(place.xM < 12 || place.xM > 20).toBe(true); // left or right of the bed
    expectNear(place.yM, 5, 0.2, 'm'); // the middle of the strip's height
  });

  test('is inside every random star, sliver and frame', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const random = seededRandom(seed);
      const star = region(randomStar(random, 3 + Math.floor(random() * 40), { xM: 0, yM: 0 }, 30, 0.99));
      expect(regionContains(star, interiorPoint(star)), `seed ${seed}`).toBe(true);
    }
    const sliver = region(points([0, 0], [100, 100], [0, 0.001]));
    expect(regionContains(sliver, interiorPoint(sliver))).toBe(true);
    const frame = region(rect(0, 0, 10, 10), rect(0.001, 0.001, 9.998, 9.998));
    expect(regionContains(frame, interiorPoint(frame))).toBe(true);
  });

  test('is the same each time', () => {
    const star = region(randomStar(seededRandom(9), 50, { xM: 0, yM: 0 }, 30, 0.6));
    expect(interiorPoint(star)).toEqual(interiorPoint(star));
  });
});
