import { expect, test } from 'vitest';
import { distanceM } from '../../../core/kernel/index.ts';
import { alongAndLeft, asPrintedM, placeAlong, placeByTapes } from '../../../core/staking/placing.ts';
import { expectNear } from '../../support/expectNear.ts';

const HERE = { xM: 1, yM: 2 };
const THERE = { xM: 4, yM: 6 }; // 3-4-5: 5 m away

test('a place along a way and to its left is found again as so far along and so far left', () => {
  const at = placeAlong(HERE, THERE, 2.5, 1);
  expectNear(at.xM, 2.5 - 0.8, 1e-12, 'm'); // half way is (2.5, 4); left of (3, 4)/5 is (-4, 3)/5
  expectNear(at.yM, 4 + 0.6, 1e-12, 'm');
  const found = alongAndLeft(HERE, THERE, at);
  expectNear(found.alongM, 2.5, 1e-12, 'm');
  expectNear(found.leftM, 1, 1e-12, 'm');
});

test('two tapes meet on the side that is said', () => {
  const left = placeByTapes([{ xM: 0, yM: 0 }, 5], [{ xM: 8, yM: 0 }, 5], 'left');
  expect(left && distanceM(left, { xM: 4, yM: 3 })).toBeLessThan(1e-9); // 3-4-5
  const right = placeByTapes([{ xM: 0, yM: 0 }, 5], [{ xM: 8, yM: 0 }, 5], 'right');
  expect(right && distanceM(right, { xM: 4, yM: -3 })).toBeLessThan(1e-9);
  expect(placeByTapes([{ xM: 0, yM: 0 }, 3], [{ xM: 8, yM: 0 }, 4], 'left')).toBeUndefined(); // 7 m for 8 m
});

test('a distance is printed to the inch or the centimetre', () => {
  expectNear(asPrintedM(1.2345, 'metric'), 1.23, 1e-12, 'm');
  expectNear(asPrintedM(1.2345, 'us'), 49 * 0.0254, 1e-12, 'm'); // 48.602 in
});
