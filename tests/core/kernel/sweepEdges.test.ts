import { expect, test } from 'vitest';
import { levelsOf, sweepEdges } from '../../../core/kernel/sweepEdges.ts';
import { points } from '../../support/builders.ts';

const KITE = points([0, 0], [2, 2], [0, 4], [-2, 2]);

test('edges come from the lowest up, with the way their ring runs', () => {
  const edges = sweepEdges([[KITE]]);
  expect([...edges.lowM]).toEqual([0, 0, 2, 2]); // the four edges of the kite
  expect([...edges.highM]).toEqual([2, 2, 4, 4]); // and their upper ends
  expect([...edges.turn].reduce((sum, turn) => sum + turn, 0)).toBe(0); // as many run up as down
  expect([...edges.slope].map(Math.abs)).toEqual([1, 1, 1, 1]); // all at 45 degrees
});

test('level edges are left out', () => {
  expect(sweepEdges([[points([0, 0], [1, 0], [1, 1], [0, 1])]]).count).toBe(2); // the two uprights of a square
});

test('levels are ends and crossings, rising', () => {
  const cross = points([-3, 1], [3, 1.5], [-3, 2]);
  const levels = [...levelsOf(sweepEdges([[KITE], [cross]]))];
  expect(levels).toEqual(levels.toSorted((a, b) => a - b)); // rising
  // Worked by hand: y = 1 + (x + 3) / 12 meets x = y at 15 / 11 and x = -y at 15 / 13.
  expect(levels.some((level) => Math.abs(level - 15 / 11) < 1e-12)).toBe(true);
  expect(levels.some((level) => Math.abs(level - 15 / 13) < 1e-12)).toBe(true);
});
