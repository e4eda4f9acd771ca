import type { PointBase } from '../area/index.ts';
import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { FieldCheck } from '../yard.ts';
import { type CheckedYard, endBaseOf } from './endBase.ts';
import { type CheckEnd, findEnd } from './findEnd.ts';
import { tapeSigmaM } from './tapeSigma.ts';

/** A taped distance held against the map. */
export interface CheckedDistance {
  readonly check: FieldCheck;
  readonly mapM: number;
  /** Taped less map: above zero when the map is too short. */
  readonly differenceM: number;
  /** One standard deviation of the difference; null when the map's corners state none. */
  readonly sigmaM: number | null;
  /** The same without the share that a wrong scale would put into every distance alike. */
  readonly pointingSigmaM: number | null;
  /** inside: not more than two standard deviations apart. */
  readonly verdict: 'inside' | 'outside' | 'not-stated';
  readonly from: CheckEnd;
  readonly to: CheckEnd;
  /** Whether both ends still lie on something; when not, what was taped is no longer what the map has. */
  readonly endsFound: boolean;
  /** The picture both ends were traced over, whose scale the distance then tells of; null when there is none. */
  readonly pictureId: string | null;
}

const INSIDE_SIGMAS = 2;

/**
 * One taped distance against the same distance on the map.
 *
 * Accuracy: first order, for distances well above the sigmas
 * Source: worked out here. An end that is misplaced by σ east and north alike moves a distance along its line
 * by σ, whatever the line's direction, so two ends give σ_a² + σ_b². A picture whose scale is wrong by the share s
 * leaves its own middle c in place and moves an end p by s (p − c): over one picture that makes the whole distance d
 * wrong by s·d; an end on a picture the other is not on gives the part of s (p − c) along the line. A scale nobody
 * states counts as right. The tape's own error is `tapeSigmaM`. An end on an edge is taken as sure as the points of
 * that outline.
 */
export function fieldCheck(yard: CheckedYard, check: FieldCheck): CheckedDistance {
  const mapM = distanceM(check.from, check.to);
  const [from, to] = [findEnd(yard, check.from), findEnd(yard, check.to)];
  const [a, b] = [endBaseOf(yard, from, check.from), endBaseOf(yard, to, check.to)];
  const differenceM = check.tapedM - mapM;
  const pointingSigmaM =
    a.sigmaM === null || b.sigmaM === null ? null : Math.hypot(a.sigmaM, b.sigmaM, tapeSigmaM(check.tapedM));
  const sigmaM = pointingSigmaM === null ? null : Math.hypot(pointingSigmaM, scaleShareM(check, a, b, mapM));
  return {
    check,
    mapM,
    differenceM,
    sigmaM,
    pointingSigmaM,
    verdict:
      sigmaM === null ? 'not-stated' : Math.abs(differenceM) <= INSIDE_SIGMAS * sigmaM ? 'inside' : 'outside',
    from,
    to,
    endsFound: from.on !== 'nothing' && to.on !== 'nothing',
    pictureId: sharedPictureId(a, b),
  };
}

function sharedPictureId(a: PointBase, b: PointBase): string | null {
  return a.scale !== null && a.scale.pictureId === b.scale?.pictureId ? a.scale.pictureId : null;
}

/** What wrong scales of pictures put into the distance, one standard deviation. */
function scaleShareM(check: FieldCheck, a: PointBase, b: PointBase, lengthM: number): number {
  if (sharedPictureId(a, b) !== null) return (a.scale?.sigma ?? 0) * lengthM;
  return Math.hypot(alongM(check, check.from, a), alongM(check, check.to, b));
}

function alongM({ from, to }: FieldCheck, end: YardPoint, { scale }: PointBase): number {
  const lengthM = distanceM(from, to);
  if (scale === null || scale.sigma === null || lengthM === 0) return 0;
  const { centre, sigma } = scale;
  const dotM2 = (end.xM - centre.xM) * (to.xM - from.xM) + (end.yM - centre.yM) * (to.yM - from.yM);
  return (sigma * dotM2) / lengthM;
}
