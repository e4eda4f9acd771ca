import { describe, expect, test } from 'vitest';
import { cellSums } from '../../../core/slope/cellSums.ts';
import { elevationGrid } from '../../../core/slope/elevationGrid.ts';
import { elevationOf } from '../../support/elevations.ts';

describe('sums of whole cells', () => {
  test('hold both facets of each cell', () => {
    const grid = elevationGrid(elevationOf(0, 0, 3, 2, 2, (xM) => 0.75 * xM));
    const sums = cellSums(grid);
    expect(sums.coveredM2[0]).toBe(4); // 2 × 2
    expect(sums.surfaceM2[1]).toBeCloseTo(5, 12); // 4 × √(1 + 0.75²)
    expect(sums.gradeM2[0]).toBeCloseTo(3, 12); // 4 × 0.75
    expect(sums.steepM2[0]).toBe(4); // 75 % is beyond a third
    expect(sums.steepest[1]).toBeCloseTo(0.75, 12); // the plane's
    expect(sums.coveredM2[2]).toBe(0); // the last column begins no cell
    expect(cellSums(grid)).toBe(sums); // once for a grid
  });

  test('count only the facets that have heights', () => {
    const grid = elevationGrid(elevationOf(0, 0, 2, 2, 2, (xM, yM) => (xM + yM === 0 ? null : 1)));
    expect(cellSums(grid).coveredM2[0]).toBe(2); // half of 2 × 2
    expect(cellSums(grid).surfaceM2[0]).toBe(2); // level
  });
});
