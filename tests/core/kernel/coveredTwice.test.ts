import { expect, test } from 'vitest';
import { bufferLine, coveredTwice, regionsAreaM2, unionRegions } from '../../../core/kernel/index.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

test('is where two overlap', () => {
  const deep = coveredTwice([region(rect(-2, -2, 4, 4)), region(rect(0, 0, 4, 4))]);
  expectNear(regionsAreaM2(deep), 4, 1e-9, 'm²'); // the shared 2 m x 2 m
});

test('counts a third layer no further, and a hole as bare', () => {
  const ring = region(rect(0, 0, 10, 10), rect(2, 2, 6, 6));
  const deep = coveredTwice([ring, region(rect(0, 0, 5, 10)), region(rect(0, 0, 5, 10))]);
  expectNear(regionsAreaM2(deep), 50, 1e-9, 'm²'); // the two alike cover 5 m x 10 m twice, ring or not
});

test('of regions side by side is nothing', () => {
  expect(coveredTwice([region(rect(0, 0, 4, 4)), region(rect(4, 0, 4, 4))])).toEqual([]); // they only touch
  expect(coveredTwice([])).toEqual([]); // no regions
});

test('never holds more than all regions have over their union', () => {
  // Holes of the result that touch its edge by rounding were once dropped, and their ground counted.
  const random = seededRandom(17);
  const point = () => ({ xM: between(random, 0, 20), yM: between(random, 0, 20) });
  for (let i = 0; i < 150; i++) {
    const strips = Array.from({ length: 24 }, () => bufferLine([point(), point()], 0.8, 'flat')).flat();
    const spareM2 = regionsAreaM2(strips) - regionsAreaM2(unionRegions(strips));
    const deepM2 = regionsAreaM2(coveredTwice(strips));
    // Twice-covered ground counts once in the spare, thrice-covered ground twice.
    expect(deepM2).toBeLessThanOrEqual(spareM2 + 1e-3);
    expect(deepM2).toBeGreaterThan(spareM2 / 23);
  }
});
