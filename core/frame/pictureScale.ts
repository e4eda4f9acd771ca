import { ok, type Result, trouble } from '../result.ts';
import type { PicturePoint, YardPoint } from '../spaces.ts';
import type { PictureCorners } from '../yard.ts';

export interface KnownLength {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly fromPx: PicturePoint;
  readonly toPx: PicturePoint;
  readonly lengthM: number;
}

/**
 * The corners of an upright picture whose scale is known from one length on it. Its middle lies on the yard's
 * origin, its top is north.
 *
 * Problems: value/not-positive for a length that is not above 0, value/no-scale when both ends are one place
 */
export function scalePicture({
  widthPx,
  heightPx,
  fromPx,
  toPx,
  lengthM,
}: KnownLength): Result<PictureCorners> {
  const where = { field: 'known length' };
  if (!(lengthM > 0 && lengthM < Infinity)) return trouble({ kind: 'value/not-positive', where, facts: {} });
  const lengthPx = Math.hypot(toPx.xPx - fromPx.xPx, toPx.yPx - fromPx.yPx);
  if (!(lengthPx > 0)) return trouble({ kind: 'value/no-scale', where, facts: {} });
  const eastM = (widthPx / 2) * (lengthM / lengthPx);
  const northM = (heightPx / 2) * (lengthM / lengthPx);
  return ok([
    { xM: -eastM, yM: northM },
    { xM: eastM, yM: northM },
    { xM: eastM, yM: -northM },
    { xM: -eastM, yM: -northM },
  ]);
}

/** Where a pixel lies in the yard, by the affine map that takes three of the picture's corners to theirs. */
export function picturePointToYard(
  [northWest, northEast, , southWest]: PictureCorners,
  widthPx: number,
  heightPx: number,
  { xPx, yPx }: PicturePoint,
): YardPoint {
  const across = xPx / widthPx;
  const down = yPx / heightPx;
  return {
    xM: northWest.xM + across * (northEast.xM - northWest.xM) + down * (southWest.xM - northWest.xM),
    yM: northWest.yM + across * (northEast.yM - northWest.yM) + down * (southWest.yM - northWest.yM),
  };
}

/** The pixel that lies at a place in the yard: the inverse of `picturePointToYard`. Corners not on one line. */
export function yardToPicturePoint(
  [northWest, northEast, , southWest]: PictureCorners,
  widthPx: number,
  heightPx: number,
  { xM, yM }: YardPoint,
): PicturePoint {
  const [ax, ay] = [northEast.xM - northWest.xM, northEast.yM - northWest.yM];
  const [bx, by] = [southWest.xM - northWest.xM, southWest.yM - northWest.yM];
  const [px, py] = [xM - northWest.xM, yM - northWest.yM];
  // Cramer's rule for p = across a + down b.
  const turn = ax * by - ay * bx;
  return { xPx: (widthPx * (px * by - py * bx)) / turn, yPx: (heightPx * (ax * py - ay * px)) / turn };
}
