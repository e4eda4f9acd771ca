import type { Job } from '../yard.ts';

/** A job with the usual for all that is not said: every zone, even loads, lanes as the plan picks them, no hose. */
export function newJob(said: Pick<Job, 'id' | 'name' | 'productId' | 'applicatorId'> & Partial<Job>): Job {
  return {
    zoneIds: null,
    policy: 'even',
    heading: { kind: 'best' },
    rounds: 1,
    heldCuts: [],
    startAt: null,
    finishAt: null,
    hose: null,
    ...said,
  };
}
