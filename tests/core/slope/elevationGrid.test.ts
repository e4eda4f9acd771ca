import { describe, expect, test } from 'vitest';
import { elevationGrid } from '../../../core/slope/elevationGrid.ts';
import { elevationOf } from '../../support/elevations.ts';

describe('an elevation grid in the yard', () => {
  test('has its first node in the north-west and runs east, then south', () => {
    const grid = elevationGrid(elevationOf(10, 20, 3, 2, 5, (xM, yM) => xM + yM / 10));
    expect([...grid.xM]).toEqual([10, 15, 20, 10, 15, 20]); // 5 m apart from 10
    expect([...grid.yM]).toEqual([25, 25, 25, 20, 20, 20]); // the north row first
    expect([...grid.zM]).toEqual([12.5, 17.5, 22.5, 12, 17, 22]); // x + y/10
  });

  test('a node without a height is no number', () => {
    const grid = elevationGrid(elevationOf(0, 0, 2, 2, 1, (xM) => (xM === 0 ? null : 1)));
    expect([...grid.zM]).toEqual([Number.NaN, 1, Number.NaN, 1]); // as built
  });

  test('nodes run evenly between four corners that are out of square', () => {
    const square = elevationOf(0, 0, 3, 3, 1, () => 0);
    const [northWest, northEast, , southWest] = square.corners;
    const pulled = { ...square, corners: [northWest, northEast, { xM: 4, yM: -2 }, southWest] as const };
    const grid = elevationGrid(pulled);
    expect([grid.xM[4], grid.yM[4]]).toEqual([1.5, 0.5]); // the middle is the mean of the corners: (0+2+4+0)/4, (2+2-2+0)/4
  });

  test('is laid out once', () => {
    const elevation = elevationOf(0, 0, 2, 2, 1, () => 0);
    expect(elevationGrid(elevation)).toBe(elevationGrid(elevation)); // the same object
  });
});
