import { expect, test } from 'vitest';
import { bendTree } from '../../../core/hose/bendTree.ts';
import { SightLines } from '../../../core/kernel/index.ts';
import { rect, region } from '../../support/builders.ts';

const at = (xM: number, yM: number) => ({ xM, yM });

test('round a house a way bends at its corners, nearest first, and goes on along its walls', () => {
  const bends = bendTree(new SightLines([region(rect(0, 0, 10, 8))]), at(4, -3));
  expect(bends.map((bend) => bend.at)).toEqual([at(4, -3), at(0, 0), at(10, 0), at(0, 8), at(10, 8)]);
  expect(bends.map((bend) => bend.via)).toEqual([-1, 0, 0, 1, 2]);
  const lengthsM = [0, 5, Math.hypot(6, 3), 5 + 8, Math.hypot(6, 3) + 8]; // 3-4-5 to the west corner, then walls
  bends.forEach((bend, i) => {
    expect(bend.soFarM).toBeCloseTo(lengthsM[i] ?? 0, 12);
  });
});

test('a way never bends at an inward corner, at one it meets head on, or at one nobody gets to', () => {
  const court = region(rect(0, 0, 10, 8), rect(3, 3, 2, 2));
  const ell = region([at(20, 0), at(30, 0), at(30, 4), at(24, 4), at(24, 10), at(20, 10)]);
  const bends = bendTree(new SightLines([court, ell]), at(15, 20)).map(
    (bend) => `${bend.at.xM} ${bend.at.yM}`,
  );
  expect(bends).not.toContain('24 4'); // the inward corner
  expect(bends).not.toContain('3 3'); // of the court
  expect(bends).not.toContain('10 8'); // from there the walls run to both sides
  expect(bends).toHaveLength(1 + 3 + 4); // start, house without (10, 8), L without (20, 10) and its inward corner
});

test('with nothing in the way there is the start alone', () => {
  expect(bendTree(new SightLines([]), at(1, 2))).toHaveLength(1);
});
