import { type PointBase, pointBaseOf } from '../area/index.ts';
import { regionContains } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Picture, Yard } from '../yard.ts';
import type { CheckEnd } from './findEnd.ts';

export type CheckedYard = Pick<Yard, 'details' | 'pictures' | 'outlines' | 'marks'>;

/** How sure an end is: as its outline's points are; anything else as a point of the picture it lies on, if any. */
export function endBaseOf(yard: CheckedYard, end: CheckEnd, at: YardPoint): PointBase {
  if (end.on === 'corner' || end.on === 'edge') return pointBaseOf(end.outline, yard);
  const pictureId = yard.pictures.findLast((each) => liesOn(each, at))?.id ?? null;
  const by = pictureId === null ? 'hand' : 'picture';
  return pointBaseOf({ placing: { by, pictureId, sigmaM: null } }, yard);
}

function liesOn({ placement }: Picture, at: YardPoint): boolean {
  return placement.kind !== 'unscaled' && regionContains({ outer: placement.corners, holes: [] }, at);
}
