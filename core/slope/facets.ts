import type { ElevationGrid } from './elevationGrid.ts';

/** The two triangles of a grid cell, each with its grade; NaN where a corner has no height or the triangle no area. */
export interface CellFacets {
  /** 'nw-se' or 'ne-sw': which two corners of the cell the triangles share. */
  readonly diagonal: 'nw-se' | 'ne-sw';
  /** Left of the diagonal as it is named, in a grid that is not mirrored: the north-east or the south-east one. */
  readonly left: Facet;
  readonly right: Facet;
}

export interface Facet {
  readonly planM2: number;
  readonly grade: number;
}

/**
 * The facets of one cell, by the number of its north-west node. The diagonal joins the two corners that differ
 * less in height (north-west and south-east when they differ equally), so that a bank or a ditch is not bridged;
 * where one corner has no height, the diagonal leaves the other three to one triangle.
 */
export function cellFacets(grid: ElevationGrid, northWest: number): CellFacets {
  const { zM, columns } = grid;
  const [northEast, southWest, southEast] = [northWest + 1, northWest + columns, northWest + columns + 1];
  const alongM = Math.abs((zM[northWest] as number) - (zM[southEast] as number));
  const acrossM = Math.abs((zM[northEast] as number) - (zM[southWest] as number));
  if (alongM <= acrossM || Number.isNaN(acrossM)) {
    return {
      diagonal: 'nw-se',
      left: facet(grid, northWest, southEast, northEast),
      right: facet(grid, northWest, southEast, southWest),
    };
  }
  return {
    diagonal: 'ne-sw',
    left: facet(grid, northEast, southWest, southEast),
    right: facet(grid, northEast, southWest, northWest),
  };
}

/** Source: the plane through three points, worked out here; its gradient by Cramer's rule. */
function facet({ xM, yM, zM }: ElevationGrid, a: number, b: number, c: number): Facet {
  const [ax, ay, az] = [xM[a] as number, yM[a] as number, zM[a] as number];
  const [bx, by, bz] = [(xM[b] as number) - ax, (yM[b] as number) - ay, (zM[b] as number) - az];
  const [cx, cy, cz] = [(xM[c] as number) - ax, (yM[c] as number) - ay, (zM[c] as number) - az];
  const twice = bx * cy - cx * by;
  const east = (bz * cy - cz * by) / twice;
  const north = (bx * cz - cx * bz) / twice;
  const grade = Math.hypot(east, north);
  // A facet of no area, in a grid with two corners at one place, has no grade: nothing × infinity is not a number.
  return { planM2: Math.abs(twice) / 2, grade: Number.isFinite(grade) ? grade : Number.NaN };
}
