import type { ElevationGrid } from './elevationGrid.ts';
import { cellFacets } from './facets.ts';
import { STEEP_GRADE, surfaceFactor } from './grade.ts';

/** What each whole cell of a grid adds up to, by the number of its north-west node; see `SlopedGround`. */
export interface CellSums {
  readonly coveredM2: Float64Array;
  readonly surfaceM2: Float64Array;
  readonly gradeM2: Float64Array;
  readonly steepM2: Float64Array;
  readonly steepest: Float64Array;
}

/** A zone that is being dragged asks for the same cells many times a second. */
const summed = new WeakMap<ElevationGrid, CellSums>();

/** Cost: once for a grid, linear in its nodes; some 40 bytes each */
export function cellSums(grid: ElevationGrid): CellSums {
  const known = summed.get(grid);
  if (known) return known;
  const { columns, rows } = grid;
  const made = (): Float64Array => new Float64Array(columns * rows);
  const sums = { coveredM2: made(), surfaceM2: made(), gradeM2: made(), steepM2: made(), steepest: made() };
  for (let row = 0; row < rows - 1; row++) {
    for (let column = 0; column < columns - 1; column++) {
      const cell = row * columns + column;
      const { left, right } = cellFacets(grid, cell);
      for (const { grade, planM2 } of [left, right]) {
        if (Number.isNaN(grade)) continue;
        (sums.coveredM2[cell] as number) += planM2;
        (sums.surfaceM2[cell] as number) += planM2 * surfaceFactor(grade);
        (sums.gradeM2[cell] as number) += planM2 * grade;
        if (grade > STEEP_GRADE) (sums.steepM2[cell] as number) += planM2;
        sums.steepest[cell] = Math.max(sums.steepest[cell] as number, grade);
      }
    }
  }
  summed.set(grid, sums);
  return sums;
}
