import { Defect } from '../../core/result.ts';

/** A plane-to-plane map h, row by row: x' = (h0 x + h1 y + h2) / (h6 x + h7 y + h8), y' with h3…h5. */
export type Projective = readonly [number, number, number, number, number, number, number, number, number];

export interface Xy {
  readonly x: number;
  readonly y: number;
}

/** Four corners going round: (0,0), (width,0), (width,height), (0,height) in the picture's own order. */
export type Quad = readonly [Xy, Xy, Xy, Xy];

/**
 * The projective map that lays a picture of so many pixels on four corners. Exact at the corners; straight
 * lines stay straight.
 *
 * Source: square-to-quadrilateral in closed form (Heckbert 1989, "Fundamentals of Texture Mapping and Image
 * Warping", section 2.2.3), with the square scaled to the picture's size.
 */
export function pictureToQuad(widthPx: number, heightPx: number, quad: Quad): Projective {
  const [p0, p1, p2, p3] = quad;
  const sx = p0.x - p1.x + p2.x - p3.x;
  const sy = p0.y - p1.y + p2.y - p3.y;
  const dx1 = p1.x - p2.x;
  const dx2 = p3.x - p2.x;
  const dy1 = p1.y - p2.y;
  const dy2 = p3.y - p2.y;
  const det = dx1 * dy2 - dx2 * dy1;
  if (det === 0) throw new Defect('the four corners of a picture lie on one line');
  const g = (sx * dy2 - dx2 * sy) / det;
  const h = (dx1 * sy - sx * dy1) / det;
  return [
    (p1.x - p0.x + g * p1.x) / widthPx,
    (p3.x - p0.x + h * p3.x) / heightPx,
    p0.x,
    (p1.y - p0.y + g * p1.y) / widthPx,
    (p3.y - p0.y + h * p3.y) / heightPx,
    p0.y,
    g / widthPx,
    h / heightPx,
    1,
  ];
}

export function projected(map: Projective, at: Xy): Xy {
  const w = map[6] * at.x + map[7] * at.y + map[8];
  return {
    x: (map[0] * at.x + map[1] * at.y + map[2]) / w,
    y: (map[3] * at.x + map[4] * at.y + map[5]) / w,
  };
}

/** The map back, up to a common factor, which a projective map does not see. */
export function inverseOfProjective(map: Projective): Projective {
  const [a, b, c, d, e, f, g, h, i] = map;
  return [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
}
