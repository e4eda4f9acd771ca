import type { PicturePoint, YardPoint } from '../../core/spaces.ts';
import type { Picture, PictureCorners } from '../../core/yard.ts';
import { inverseOfProjective, pictureToQuad, projected, type Quad } from './projective.ts';

/** How long the longer side of a picture without a scale is shown: the size of a middling yard, to be scaled. */
const UNSCALED_LONG_SIDE_M = 40;

/** Where a picture lies. One without a scale is shown round the yard's origin, at a size that means nothing. */
export function pictureCorners(picture: Picture): PictureCorners {
  if (picture.placement.kind !== 'unscaled') return picture.placement.corners;
  const perPx = UNSCALED_LONG_SIDE_M / Math.max(picture.widthPx, picture.heightPx);
  const eastM = (picture.widthPx * perPx) / 2;
  const northM = (picture.heightPx * perPx) / 2;
  return [
    { xM: -eastM, yM: northM },
    { xM: eastM, yM: northM },
    { xM: eastM, yM: -northM },
    { xM: -eastM, yM: -northM },
  ];
}

/** The pixel of a picture that lies at a place in the yard (outside its edges for a place beyond it). */
export function yardToPicture(picture: Picture, at: YardPoint): PicturePoint {
  const quad = pictureCorners(picture).map(({ xM, yM }) => ({ x: xM, y: yM })) as unknown as Quad;
  const back = inverseOfProjective(pictureToQuad(picture.widthPx, picture.heightPx, quad));
  const { x, y } = projected(back, { x: at.xM, y: at.yM });
  return { xPx: x, yPx: y };
}
