import type { PlanRequest } from '../../core/plan/index.ts';

/** A request with the usual for all that is not said: even sections, best lanes, one round, no hose. */
export function planRequest(
  said: Pick<PlanRequest, 'loadAreaM2' | 'swathM'> & Partial<PlanRequest>,
): PlanRequest {
  return {
    paceMPerS: 1,
    stepM: 0.7,
    policy: 'even',
    heading: { kind: 'best' },
    rounds: 1,
    heldCuts: [],
    startAt: null,
    finishAt: null,
    hose: null,
    markM: null,
    tapeSides: [],
    ...said,
  };
}
