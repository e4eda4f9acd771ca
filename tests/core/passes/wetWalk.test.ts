import { expect, test } from 'vitest';
import { type TroddenPass, wetWalkM } from '../../../core/passes/wetWalk.ts';
import { points, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

/** Swath of every case; feet keep 0.02 of it, 0.04 m, off its edge. */
const SWATH_M = 2;

function pass(line: TroddenPass['line'], round: 1 | 2 = 1, sectionId = 'A1'): TroddenPass {
  return { line, round, sectionId };
}

const EAST = pass(points([0, 0], [20, 0]));

test('a lane a swath beside another, and the step to it, are dry', () => {
  const beside = pass(points([20, 2], [0, 2]));
  expect(wetWalkM([EAST, beside], [null, points([20, 0], [20, 2])], SWATH_M)).toEqual([0, 0]); // feet stay on both edges
});

test('a way across an earlier swath is wet for its width', () => {
  const far = pass(points([5, 5], [0, 5]));
  const way = points([20, 0], [20, -9], [10, -9], [10, 5]);
  const [, wetM] = wetWalkM([EAST, pass(points([20, 30], [10, 30])), far], [null, null, way], SWATH_M);
  expect(wetM).toBe(0); // the second pass leads nowhere near
  const wet = wetWalkM([EAST, pass(points([20, 30], [10, 30])), far], [null, null, way], SWATH_M)[2];
  // Closed form: from (20, 0) along the end of the lane, dry; at x = 10 across it, 2 m less 0.04 m at each edge.
  expectNear(wet ?? Number.NaN, 2 - 0.08, 1e-9, 'm');
});

test('a pass over an earlier one is wet where they cross, at any angle', () => {
  const slant = pass(points([5, -10], [15, 10]));
  const across = 1 - 0.04; // half a swath less the edge
  const expected = (2 * across * Math.hypot(10, 20)) / 20; // closed form: width over the sine of the angle
  expectNear(wetWalkM([EAST, slant], [null, null], SWATH_M)[1] ?? Number.NaN, expected, 1e-9, 'm');
});

test('ground under two earlier swaths is walked over once', () => {
  const over = pass(points([10, -3], [10, 3]));
  const twice = wetWalkM([EAST, pass(points([0, 0.5], [20, 0.5])), over], [null, null, null], SWATH_M)[2];
  expectNear(twice ?? Number.NaN, 0.96 + 1.46, 1e-9, 'm'); // closed form: from -0.96 m to 0.5 + 0.96 m
});

test('the first half swath off the pass just walked is free, the rest is not', () => {
  const ring = pass([...rect(0, 0, 20, 20), { xM: 0, yM: 0 }]);
  const inside = pass(points([10, 5], [12, 5]));
  const off = wetWalkM([ring, inside], [null, points([0, 0], [0, 1], [4, 5], [10, 5])], SWATH_M)[1];
  // Up the west side of the ring for 1 m, free; then off it slantwise: 0.96 m across at 45 degrees.
  expectNear(off ?? Number.NaN, 0.96 * Math.SQRT2, 1e-9, 'm');
});

test('the second round walks over the first by nature, but not over another section', () => {
  const again = pass(points([10, -5], [10, 5]), 2);
  expect(wetWalkM([EAST, again], [null, null], SWATH_M)[1]).toBe(0); // the same section
  const other = pass(points([10, -5], [10, 5]), 2, 'A2');
  expectNear(wetWalkM([EAST, other], [null, null], SWATH_M)[1] ?? Number.NaN, 1.92, 1e-9, 'm'); // 2 m less both edges
});

test('the way to where the walk ends counts on its own', () => {
  const [, home] = wetWalkM([EAST], [null, points([20, 0], [5, 0], [5, 9])], SWATH_M);
  // Back along the lane: its first metre is free, and 0.04 m are no end; then on at x = 5 to its edge at 0.96 m.
  expectNear(home ?? Number.NaN, 15 - 1 + 0.96, 1e-9, 'm');
});
