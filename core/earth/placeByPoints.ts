import { fitRigid, movePoint } from '../frame/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { LonLat, YardPoint } from '../spaces.ts';
import { frameAround } from './frameAround.ts';
import { lonLatToYard, yardToLonLat } from './yardFrame.ts';

/** A point of the yard whose place on earth is known. */
export interface KnownPlace {
  readonly at: YardPoint;
  readonly place: LonLat;
}

/** Where a loose yard belongs: the place of its middle, and how far it is turned about it. */
export interface YardPlacing {
  readonly origin: LonLat;
  /** Degrees clockwise. */
  readonly turnDeg: number;
  /** How far each point is from its place once the yard lies there. */
  readonly residualsM: readonly number[];
  /** Above 1 where the places are farther apart than the yard has them; the yard is never scaled. */
  readonly ratio: number;
}

/** Places this many times farther apart than in the yard, or closer, are not those of this yard. */
const MOST_RATIO = 2;

/** Places farther apart than the yard has them, or closer, by this part are more than tapes and maps are worth. */
const MISFIT = 0.005;

/** What is to be said of places that a yard fits, but at another scale; `field` names the places. */
export function scaleMisfit(ratio: number, field: string): Problem | undefined {
  if (Math.abs(ratio - 1) <= MISFIT) return undefined;
  return { kind: 'value/scale-misfit', where: { field }, facts: { ratio } };
}

/** See `placeByPoints`. */
const ROUNDS = 3;

/**
 * Lays a loose yard down by points of it whose places are known, by least squares of a turn and a shift.
 *
 * The fit is made in a frame whose origin is the yard's middle as placed, so that it is true to the yard's own frame:
 * begun in the frame round the places, it is done again with the origin it led to. Between the two only the frame's
 * turn differs (the meridians' convergence, below 1" at yard size), so the third round is final.
 *
 * @param middle of the yard, the point that becomes the frame's origin
 * Problems: value/too-few, value/places-coincide, value/scale-misfit beyond a factor of two
 */
export function placeByPoints(known: readonly KnownPlace[], middle: YardPoint): Result<YardPlacing> {
  let origin = frameAround(known.map(({ place }) => place));
  for (let round = 1; ; round++) {
    const frame = origin;
    const fit = fitRigid(known.map(({ at, place }) => ({ from: at, to: lonLatToYard(frame, place) })));
    if (!fit.ok) return fit;
    const { motion, residualsM, ratio } = fit.value;
    // Written so that a NaN, from places a quarter of the globe apart, is refused as well.
    if (!(ratio < MOST_RATIO && ratio > 1 / MOST_RATIO)) {
      const where = { field: 'points with known places' };
      return trouble({ kind: 'value/scale-misfit', where, facts: { ratio } });
    }
    origin = yardToLonLat(frame, movePoint(motion, middle));
    if (round === ROUNDS) return ok({ origin, turnDeg: motion.turnDeg, residualsM, ratio });
  }
}
