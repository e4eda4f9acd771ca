import { expect, test } from 'vitest';
import { coveredTwice, regionsAreaM2 } from '../../../core/kernel/index.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

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
