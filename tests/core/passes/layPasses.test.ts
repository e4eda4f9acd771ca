import { expect, test } from 'vitest';
import { layPasses } from '../../../core/passes/layPasses.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const GROUND = region(rect(0, 0, 20, 12));

test('a rectangle has a ring and lanes along it, in no order yet', () => {
  const { walks, headingDeg } = layPasses(GROUND, 2, null);
  expect(walks.filter(({ isRing }) => isRing).length).toBe(1); // round the outside
  expect(walks.filter(({ kind }) => kind === 'lane').length).toBe(4); // closed form: (12 - 2 x 2) m / 2 m
  expectNear(headingDeg, 90, 1e-9, '°'); // the long side runs east
});

test('a heading that is asked for is kept, turned past 180 as well', () => {
  expectNear(layPasses(GROUND, 2, 30).headingDeg, 30, 1e-9, '°'); // as asked
  expectNear(layPasses(GROUND, 2, 30 + 180).headingDeg, 30, 1e-9, '°'); // lanes are walked both ways
});

test('ground no swath fits in has no passes', () => {
  expect(layPasses(region(rect(0, 0, 12, 1)), 2, null).walks).toEqual([]); // half of it would fall beside
});
