import { distanceM } from '../kernel/index.ts';
import type { FieldCheck } from '../yard.ts';
import { type CheckedYard, type EndBase, endBaseOf } from './endBase.ts';
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
}

const INSIDE_SIGMAS = 2;

/**
 * One taped distance against the same distance on the map.
 *
 * Accuracy: first order, for distances well above the sigmas
 * Source: worked out here. An end that is misplaced by σ east and north alike moves a distance along its line
 * by σ, whatever the line's direction, so two ends give σ_a² + σ_b²; a picture's scale that is wrong by the
 * share s makes the whole distance d wrong by s·d when both ends were traced over it. When the ends stand on
 * different pictures each is taken as scaled about the middle of the line, so each gives s·d/2 of its own; so
 * does the one when the other end is on none. The tape's own error is `tapeSigmaM`. An end on an edge is taken
 * as sure as the corners beside it.
 */
export function fieldCheck(yard: CheckedYard, check: FieldCheck): CheckedDistance {
  const mapM = distanceM(check.from, check.to);
  const [from, to] = [findEnd(yard, check.from), findEnd(yard, check.to)];
  const [a, b] = [endBaseOf(yard, from, check.from), endBaseOf(yard, to, check.to)];
  const differenceM = check.tapedM - mapM;
  const pointingSigmaM =
    a.sigmaM === null || b.sigmaM === null ? null : Math.hypot(a.sigmaM, b.sigmaM, tapeSigmaM(check.tapedM));
  const sigmaM = pointingSigmaM === null ? null : Math.hypot(pointingSigmaM, scaleShareM(a, b, mapM));
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
  };
}

function scaleShareM(a: EndBase, b: EndBase, lengthM: number): number {
  if (a.picture?.id === b.picture?.id) return a.scaleSigma * lengthM;
  return Math.hypot(a.scaleSigma, b.scaleSigma) * (lengthM / 2);
}
