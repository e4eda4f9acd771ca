import { pictureScaleSigma, pixelSizeM } from '../frame/index.ts';
import { regionContains } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Picture, Yard } from '../yard.ts';
import type { CheckEnd } from './findEnd.ts';

/** How sure one end of a distance is on the map, and which picture's scale it shares. */
export interface EndBase {
  /** null = nobody stated it. */
  readonly sigmaM: number | null;
  readonly picture: Picture | null;
  /** Relative standard deviation of that picture’s scale; 0 without one. */
  readonly scaleSigma: number;
}

export type CheckedYard = Pick<Yard, 'details' | 'pictures' | 'outlines' | 'marks'>;

/** The base of an end: its outline's, a mark's that of the picture it lies on, else the yard's. */
export function endBaseOf(yard: CheckedYard, end: CheckEnd, at: YardPoint): EndBase {
  if (end.on === 'corner' || end.on === 'edge') {
    const { placing } = end.outline;
    const picture = yard.pictures.find(({ id }) => id === placing.pictureId) ?? null;
    const sigmaM = placing.sigmaM ?? pictureSigmaM(picture) ?? yard.details.cornerSigmaM;
    return { sigmaM, picture, scaleSigma: scaleSigmaOf(picture) };
  }
  const picture = yard.pictures.findLast((each) => liesOn(each, at)) ?? null;
  const sigmaM = pictureSigmaM(picture) ?? yard.details.cornerSigmaM;
  return { sigmaM, picture, scaleSigma: scaleSigmaOf(picture) };
}

function pictureSigmaM(picture: Picture | null): number | null {
  return picture === null ? null : (picture.cornerSigmaM ?? pixelSizeM(picture));
}

/** A picture that says nothing of its scale is taken to have it right. */
function scaleSigmaOf(picture: Picture | null): number {
  return picture === null ? 0 : (pictureScaleSigma(picture) ?? 0);
}

function liesOn({ placement }: Picture, at: YardPoint): boolean {
  return placement.kind !== 'unscaled' && regionContains({ outer: placement.corners, holes: [] }, at);
}
