import type { Elevation } from '../yard.ts';

/**
 * An elevation grid laid out in the yard: places of the nodes, heights in metres, NaN where there is none. Node
 * (column, row) is number row × columns + column.
 */
export interface ElevationGrid {
  readonly columns: number;
  readonly rows: number;
  readonly xM: Float64Array;
  readonly yM: Float64Array;
  readonly zM: Float64Array;
}

/** Laying out costs more than measuring one zone, and a grid is never changed once it is in the yard. */
const laidOut = new WeakMap<Elevation, ElevationGrid>();

/**
 * Node places run evenly between the four corners (bilinear), so that a grid from another reference system may
 * lie turned, stretched and a little out of square.
 */
export function elevationGrid(elevation: Elevation): ElevationGrid {
  const known = laidOut.get(elevation);
  if (known) return known;
  const { columns, rows, corners, heightsMm } = elevation;
  const [northWest, northEast, southEast, southWest] = corners;
  const [xM, yM, zM] = [0, 1, 2].map(() => new Float64Array(columns * rows)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  for (let row = 0, node = 0; row < rows; row++) {
    const south = row / (rows - 1);
    for (let column = 0; column < columns; column++, node++) {
      const east = column / (columns - 1);
      const between = (nw: number, ne: number, se: number, sw: number): number =>
        (nw * (1 - east) + ne * east) * (1 - south) + (sw * (1 - east) + se * east) * south;
      xM[node] = between(northWest.xM, northEast.xM, southEast.xM, southWest.xM);
      yM[node] = between(northWest.yM, northEast.yM, southEast.yM, southWest.yM);
      const heightMm = heightsMm[node] ?? null;
      zM[node] = heightMm === null ? Number.NaN : heightMm / 1000;
    }
  }
  const grid = { columns, rows, xM, yM, zM };
  laidOut.set(elevation, grid);
  return grid;
}
