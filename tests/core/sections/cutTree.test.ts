import { expect, test } from 'vitest';
import { growTree } from '../../../core/sections/cutTree.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const LAY = { laneRad: 0, swathM: 1, markM: null, loadAreaM2: 1e9 };
const effort = (partings: number, corners = 1e9) => {
  return { partings, mostFirst: 8, hasty: false, work: { left: corners } };
};
const never = (): boolean => false;

test('four quarters of a square take two cuts right across', () => {
  const tree = growTree({ region: region(rect(0, 0, 10, 10)), loads: 4, rests: [] }, LAY, effort(50), never);
  expectNear(tree?.costM ?? Number.NaN, 20, 1e-9, 'm'); // 2 x 10 m; three strips would take 30
});

test('more effort never gives longer cuts', () => {
  const ground = region(points([0, 0], [30, 0], [34, 12], [20, 11], [18, 25], [4, 22]));
  const costs = [1, 10, 100].map(
    (partings) =>
      growTree({ region: ground, loads: 5, rests: [] }, LAY, effort(partings), never)?.costM ?? NaN,
  );
  expect(costs[1]).toBeLessThanOrEqual((costs[0] as number) * (1 + 1e-9));
  expect(costs[2]).toBeLessThanOrEqual((costs[1] as number) * (1 + 1e-9));
});

test('a search ends when its work is used up, or when it is cancelled', () => {
  const share = { region: region(rect(0, 0, 10, 10)), loads: 9, rests: [] };
  expect(growTree(share, LAY, effort(50, 4), never)).toBeUndefined(); // 4 corners looked at are not enough to turn them once
  expect(growTree(share, LAY, effort(50), () => true)).toBeUndefined();
});
