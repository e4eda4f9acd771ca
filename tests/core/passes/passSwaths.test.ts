import { expect, test } from 'vitest';
import { regionsAreaM2, unionRegions } from '../../../core/kernel/index.ts';
import { passSwaths } from '../../../core/passes/passSwaths.ts';
import { points } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('a straight pass treats its length by the swath', () => {
  expectNear(regionsAreaM2(passSwaths(points([0, 0], [10, 0]), 2)), 20, 1e-4, 'm²'); // 10 m x 2 m
});

test('a square corner is two strips that overlap inside and a quarter disc outside', () => {
  const swaths = passSwaths(points([0, 0], [10, 0], [10, 10]), 2);
  expect(swaths.length).toBe(3);
  expectNear(regionsAreaM2(swaths), 40 + Math.PI / 4, 2e-3, 'm²'); // two strips of 20 m² and a quarter of pi 1²
  expectNear(regionsAreaM2(unionRegions(swaths)), 39 + Math.PI / 4, 2e-3, 'm²'); // less the square both treat
});

test('a closed pass has all its corners', () => {
  const swaths = passSwaths(points([0, 0], [10, 0], [10, 10], [0, 10], [0, 0]), 2);
  // Worked by hand: the outline 12 x 12 less four corners of 1 - pi/4 each, less the 8 x 8 inside.
  expectNear(regionsAreaM2(unionRegions(swaths)), 144 - 64 - 4 * (1 - Math.PI / 4), 5e-3, 'm²');
});

test('a gentle bend is one strip', () => {
  expect(passSwaths(points([0, 0], [10, 0], [20, 2]), 2).length).toBe(1); // 11 degrees is no pivot
});

test('a line that goes nowhere treats nothing', () => {
  expect(passSwaths(points([1, 1], [1, 1]), 2)).toEqual([]); // no length
  expect(passSwaths([], 2)).toEqual([]); // no point
});
