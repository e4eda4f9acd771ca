import { bearingOfWay } from '../frame/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import type { YardPoint } from '../spaces.ts';
import { meeting } from './meeting.ts';
import { placed, requirePositive } from './place.ts';

/** On which hand the point lies for somebody who looks from the first landmark to the second. */
export type TieSide = 'left' | 'right';

export interface Tie {
  readonly at: YardPoint;
  /** How many times as far as the error of one tape the point may move. */
  readonly timesError: number;
  /** value/tapes-cross-flat, when the tapes cross so flat that the point is loose. */
  readonly cautions: readonly Problem[];
}

/** Beyond this the point is called loose: the tapes cross at less than 30° or more than 150°. */
const MOST_TIMES_ERROR = 2;

/**
 * A point from two landmarks by a tape to each.
 *
 * Problems: value/not-positive, also when both landmarks are at one place; value/tapes-do-not-meet
 * Accuracy: relative 1e-12 of the lengths for tapes that cross well; `timesError` tells the rest
 * Source: see `meeting`. An error e of one tape moves the point along the circle of the other tape until the
 * first is met again, by e / sin c, where c is the angle at which they cross; sin c = b·y / (d1·d2), both
 * sides being twice the area of the triangle over d1·d2. At 30° it is twice the error.
 */
export function twoTapes(
  first: YardPoint,
  second: YardPoint,
  firstM: number,
  secondM: number,
  side: TieSide,
): Result<Tie> {
  const eastM = second.xM - first.xM;
  const northM = second.yM - first.yM;
  const apartM = Math.hypot(eastM, northM);
  const sizes = requirePositive({
    'distance between the landmarks': apartM,
    'first tape': firstM,
    'second tape': secondM,
  });
  if (!sizes.ok) return sizes;
  const met = meeting('two tapes', apartM, firstM, secondM);
  if (!met.ok) return met;
  const { alongM, leftM } = met.value;
  const bearingDeg = bearingOfWay(eastM, northM);
  const at = placed({ at: first, bearingDeg }, { alongM, leftM: side === 'left' ? leftM : -leftM });
  const timesError = (firstM * secondM) / (apartM * leftM);
  const cautions: readonly Problem[] =
    timesError > MOST_TIMES_ERROR
      ? [{ kind: 'value/tapes-cross-flat', where: { field: 'two tapes' }, facts: { timesError } }]
      : [];
  return ok({ at, timesError, cautions });
}
