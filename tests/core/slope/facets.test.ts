import { describe, expect, test } from 'vitest';
import { elevationGrid } from '../../../core/slope/elevationGrid.ts';
import { cellFacets } from '../../../core/slope/facets.ts';
import { elevationOf } from '../../support/elevations.ts';

/** One cell of 2 m; heights north-west, north-east, south-west, south-east. */
function cell(...heights: readonly (number | null)[]) {
  const grid = elevationOf(
    0,
    0,
    2,
    2,
    2,
    (xM, yM) => heights[(yM === 2 ? 0 : 2) + (xM === 0 ? 0 : 1)] ?? null,
  );
  return cellFacets(elevationGrid(grid), 0);
}

describe('the two facets of a cell', () => {
  test('lie in one plane where the four corners do', () => {
    const { left, right } = cell(0, 0.4, 0, 0.4);
    expect(left.grade).toBeCloseTo(0.2, 12); // 0.4 m in 2 m
    expect(right.grade).toBeCloseTo(0.2, 12); // the same plane
    expect(left.planM2 + right.planM2).toBe(4); // 2 × 2
  });

  test('share the corners that differ less, so that a ridge stays a ridge', () => {
    expect(cell(1, 0, 0.5, 1).diagonal).toBe('nw-se'); // the ridge runs north-west to south-east
    expect(cell(0, 1, 1, 0.5).diagonal).toBe('ne-sw'); // the other way
    expect(cell(0, 0, 0, 0).diagonal).toBe('nw-se'); // neither: the rule
  });

  test('a ridge has two equal sides', () => {
    const { left, right } = cell(1, 0, 0, 1);
    // 1 m down over half the diagonal, √2 m: 1/√2
    expect(left.grade).toBeCloseTo(Math.SQRT1_2, 12);
    expect(right.grade).toBeCloseTo(Math.SQRT1_2, 12); // by symmetry
  });

  test('a corner without a height leaves the other three one facet', () => {
    const plane = [0, 0.4, 0, 0.4];
    for (let missing = 0; missing < 4; missing++) {
      const { left, right } = cell(...plane.map((height, i) => (i === missing ? null : height)));
      const known = [left, right].filter(({ grade }) => !Number.isNaN(grade));
      expect(known).toHaveLength(1); // three corners are one triangle
      expect(known[0]?.grade).toBeCloseTo(0.2, 12); // the plane's own grade
    }
    const { left, right } = cell(null, 0.4, 0, null);
    expect([left.grade, right.grade]).toEqual([Number.NaN, Number.NaN]); // two corners are no triangle
  });
});
