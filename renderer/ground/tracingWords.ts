import { formatLength } from '../../core/units/index.ts';
import type { Yard } from '../../core/yard.ts';

/** Where an edge was traced anew, what of its change may be the hand's: twice the spread of a corner in either state. */
const TIMES_SIGMA = 2;

/** How narrow a strip has to be to say nothing; empty where neither yard states how well its corners are placed. */
export function tracingWords(earlier: Yard, later: Yard): readonly string[] {
  const [was, is] = [earlier, later].map(({ details }) => details.cornerSigmaM ?? 0);
  const spreadM = TIMES_SIGMA * Math.hypot(was ?? 0, is ?? 0);
  if (spreadM === 0) return [];
  const width = formatLength(spreadM, later.details.unitSystem);
  return [
    `Corners are placed only so well: along an edge that was traced anew, a strip narrower than some ${width} may be the hand’s and not the ground’s.`,
  ];
}
