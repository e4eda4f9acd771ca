import { expect, test } from 'vitest';
import { measureCoverage } from '../../../core/passes/index.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const GROUND = [region(rect(0, 0, 20, 4))];

test('two passes side by side cover once and no more', () => {
  const passes = [{ line: points([0, 1], [20, 1]) }, { line: points([20, 3], [0, 3]) }];
  const coverage = measureCoverage(GROUND, passes, 2);
  expectNear(coverage.onceM2, 80, 1e-3, 'm²'); // 20 m x 4 m
  expectNear(coverage.twiceM2 + coverage.missedM2 + coverage.outsideM2, 0, 1e-3, 'm²'); // nothing else
});

test('overlap, gap and overthrow are each told', () => {
  // One pass 1 m too far west, one 0.5 m too near the first, the east end 2 m short.
  const passes = [{ line: points([-1, 1], [20, 1]) }, { line: points([18, 2.5], [0, 2.5]) }];
  const coverage = measureCoverage(GROUND, passes, 2);
  expectNear(coverage.outsideM2, 2, 1e-3, 'm²'); // worked by hand: 1 m x 2 m
  expectNear(coverage.twiceM2, 9, 1e-3, 'm²'); // worked by hand: 18 m x 0.5 m
  expectNear(coverage.missedM2, 18 * 0.5 + 2 * 2, 1e-3, 'm²'); // worked by hand: the north strip and the end
});

test('the parts always sum to the ground', () => {
  const passes = [{ line: points([-3, 0.3], [12, 3], [19, 1]) }, { line: points([4, 4], [4, -2], [16, 3]) }];
  const { treatedM2, onceM2, twiceM2, missedM2 } = measureCoverage(GROUND, passes, 1.3);
  expectNear(onceM2 + twiceM2 + missedM2, treatedM2, 1e-9, 'm²'); // the balance
  expect(Math.min(onceM2, twiceM2, missedM2)).toBeGreaterThan(0);
});

test('ground walked three times counts once as twice', () => {
  const line = points([0, 2], [20, 2]);
  const coverage = measureCoverage(GROUND, [{ line }, { line }, { line }], 2);
  expectNear(coverage.twiceM2, 40, 1e-3, 'm²'); // 20 m x 2 m, however often
});

test('no pass misses everything', () => {
  expectNear(measureCoverage(GROUND, [], 2).missedM2, 80, 1e-9, 'm²'); // 20 m x 4 m
});
