import { hoseGround } from '../hose/index.ts';
import { tapeMarkM } from '../sections/index.ts';
import { tapeSidesOf } from '../staking/index.ts';
import type { Applicator, Job, Yard } from '../yard.ts';
import type { PlanRequest } from './plan.ts';

/** What a job asks of the planner, with an applicator whose load covers `loadAreaM2`. */
export function planRequestOf(
  yard: Yard,
  job: Job,
  { swathM, paceMPerS, stepM }: Applicator,
  loadAreaM2: number,
): PlanRequest {
  const { policy, heading, rounds, startAt, finishAt, hose } = job;
  return {
    loadAreaM2,
    swathM,
    paceMPerS,
    stepM,
    policy,
    heading,
    rounds,
    heldCuts: job.heldCuts.filter(({ zoneId }) => isPlanned(yard, job, zoneId)),
    startAt,
    finishAt,
    hose: hose === null ? null : hoseGround(yard, hose),
    markM: tapeMarkM(yard.details.unitSystem),
    tapeSides: tapeSidesOf(yard),
  };
}

/** Whether a zone is one of the job's, or gone: a cut held in a zone that is left out of the job waits for it. */
function isPlanned({ outlines }: Yard, { zoneIds }: Job, zoneId: string): boolean {
  return (
    zoneIds === null ||
    zoneIds.includes(zoneId) ||
    !outlines.some(({ id, kind }) => id === zoneId && kind === 'zone')
  );
}
