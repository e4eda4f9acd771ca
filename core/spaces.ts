/**
 * The four spaces a coordinate can live in, each its own type so that a pixel cannot be taken for a metre.
 * A function that crosses from one to another says so in its name (`lonLatToYard`).
 */

/** WGS84 degrees. */
export interface LonLat {
  readonly lonDeg: number;
  readonly latDeg: number;
}

/** Yard frame: metres, x east, y north. Every length and area is computed here. */
export interface YardPoint {
  readonly xM: number;
  readonly yM: number;
}

/** Printed page: millimetres from the top left corner, y down. */
export interface PagePoint {
  readonly xMm: number;
  readonly yMm: number;
}

/** Pixel of a base picture: x right, y down, (0, 0) the outer corner of the top left pixel. */
export interface PicturePoint {
  readonly xPx: number;
  readonly yPx: number;
}

/** Open ring: the last vertex is not the first. An outer ring runs counter-clockwise, a hole clockwise. */
export type Ring = readonly YardPoint[];

/** One connected piece of ground: an outer ring and the holes in it. */
export interface Region {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}
