import { ok, type Result, trouble } from '../result.ts';
import type { PicturePoint, YardPoint } from '../spaces.ts';
import type { PictureCorners } from '../yard.ts';

export interface PictureSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * The corners of an upright picture whose scale is known from one length on it. Its middle lies on the yard's
 * origin, its top is north.
 *
 * Problems: value/not-positive for the length, value/no-scale when both ends are the same place
 */
export function scaledCorners(
  size: PictureSize,
  fromPx: PicturePoint,
  toPx: PicturePoint,
  lengthM: number,
): Result<PictureCorners> {
  const where = { field: 'known length' };
  if (!(lengthM > 0) || !Number.isFinite(lengthM))
    return trouble({ kind: 'value/not-positive', where, facts: {} });
  const lengthPx = Math.hypot(toPx.xPx - fromPx.xPx, toPx.yPx - fromPx.yPx);
  if (!(lengthPx > 0)) return trouble({ kind: 'value/no-scale', where, facts: {} });
  const halfWidthM = (size.widthPx / 2) * (lengthM / lengthPx);
  const halfHeightM = (size.heightPx / 2) * (lengthM / lengthPx);
  return ok([
    { xM: -halfWidthM, yM: halfHeightM },
    { xM: halfWidthM, yM: halfHeightM },
    { xM: halfWidthM, yM: -halfHeightM },
    { xM: -halfWidthM, yM: -halfHeightM },
  ]);
}

/** Where a pixel lies in the yard, by the affine map that takes three of the picture's corners to theirs. */
export function picturePointToYard(
  corners: PictureCorners,
  size: PictureSize,
  { xPx, yPx }: PicturePoint,
): YardPoint {
  const [northWest, northEast, , southWest] = corners;
  const across = xPx / size.widthPx;
  const down = yPx / size.heightPx;
  return {
    xM: northWest.xM + across * (northEast.xM - northWest.xM) + down * (southWest.xM - northWest.xM),
    yM: northWest.yM + across * (northEast.yM - northWest.yM) + down * (southWest.yM - northWest.yM),
  };
}
