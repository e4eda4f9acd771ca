import { type KnownPlace, lonLatToYard, placeByPoints, type YardPlacing } from '../earth/index.ts';
import { fitRigid } from '../frame/index.ts';
import { ok, type Result } from '../result.ts';
import type { Yard } from '../yard.ts';
import type { Edit } from './edit.ts';
import { hasFixedGround, moveYardEdit, placeYardEdit, yardMiddle } from './moveYard.ts';

export interface PlacedByPoints extends Pick<YardPlacing, 'residualsM' | 'ratio'> {
  readonly edit: Edit;
}

/**
 * Lays a yard down by points of it whose places are known, as one edit: see `placeByPoints`. In a yard with fixed
 * ground the frame stays and what is drawn is moved within it.
 *
 * Problems: those of `placeByPoints`
 */
export function placeByPointsEdit(yard: Yard, known: readonly KnownPlace[]): Result<PlacedByPoints> {
  const placing = placeByPoints(known, yardMiddle(yard));
  if (!placing.ok) return placing;
  const { frame } = yard.details;
  if (!hasFixedGround(yard) || frame.kind === 'loose') {
    return ok({ ...placing.value, edit: placeYardEdit(yard, placing.value) });
  }
  const fit = fitRigid(known.map(({ at, place }) => ({ from: at, to: lonLatToYard(frame.origin, place) })));
  return fit.ok ? ok({ ...fit.value, edit: moveYardEdit(yard, fit.value.motion) }) : fit;
}
