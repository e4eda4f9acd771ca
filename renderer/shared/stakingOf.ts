import type { GroundPlan } from '../../core/plan/index.ts';
import { stakeCuts, type Staking } from '../../core/staking/index.ts';
import type { Yard } from '../../core/yard.ts';

const known = new WeakMap<GroundPlan, Staking>();

/**
 * How a plan's cut lines are flagged, worked out once a plan: while an outline is dragged the plan on the sketch is the
 * last one, and its flags stay with it.
 */
export function stakingOf(yard: Yard, plan: GroundPlan): Staking {
  const found = known.get(plan);
  if (found !== undefined) return found;
  const made = stakeCuts(yard, plan, yard.details.unitSystem);
  known.set(plan, made);
  return made;
}
