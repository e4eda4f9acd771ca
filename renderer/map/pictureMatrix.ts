import { pictureToQuad, type Quad } from '../drawing/index.ts';

/**
 * The CSS transform that lays a picture, `transform-origin` at its top left, on four corners in pixels: a
 * plane projective map written as the 4 × 4 matrix of CSS Transforms Level 2 (column by column, z untouched).
 */
export function pictureMatrix(widthPx: number, heightPx: number, quad: Quad): string {
  const [a, b, c, d, e, f, g, h, i] = pictureToQuad(widthPx, heightPx, quad);
  return `matrix3d(${[a, d, 0, g, b, e, 0, h, 0, 0, 1, 0, c, f, 0, i].join(',')})`;
}
