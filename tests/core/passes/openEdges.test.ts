import { expect, test } from 'vitest';
import { findOpenEdges } from '../../../core/passes/openEdges.ts';
import { lShape, moved, points, rect, region } from '../../support/builders.ts';

test('all edges of a rectangle are open to lanes along it, however it lies', () => {
  for (const turnRad of [0, 0.4, 2]) {
    const open = findOpenEdges(region(moved(rect(0, 0, 20, 12), turnRad, 7, -3)), turnRad, 2);
    expect(open?.isOpen).toEqual([true, true, true, true]); // two run along, two are square
  }
});

test('the inner edge along the lanes of an L is not open, the rims are', () => {
  const open = findOpenEdges(region(lShape(20, 12, 8, 5)), 0, 2);
  // Worked by hand, edge by edge from the south: rim, square, inner edge along, square at the reflex corner, rim, square.
  expect(open?.isOpen).toEqual([true, true, false, true, true, true]);
});

test('a slanting edge is not open', () => {
  const open = findOpenEdges(region(points([0, 0], [20, 0], [24, 12], [0, 12])), 0, 2);
  expect(open?.isOpen[1]).toBe(false);
});

test('an edge that meets a closed one at a sharp corner is not open', () => {
  const open = findOpenEdges(region(points([0, 0], [20, 0], [10, 12], [0, 12])), 0, 2);
  expect(open?.isOpen).toEqual([false, false, true, true]); // the corner at (20, 0) has 50 degrees
});

test('ground narrower than the swath has no open edge', () => {
  expect(findOpenEdges(region(rect(0, 0, 20, 1.5)), 0, 2)).toBeUndefined();
});
