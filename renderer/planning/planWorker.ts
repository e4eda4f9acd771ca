import { expose } from 'comlink';
import { type JobPlan, planJob } from '../../core/plan/index.ts';
import type { Result } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';

/** Runs the planner off the window's thread; the window ends the whole worker to cancel it. */
const planWork = {
  plan(yard: Yard, jobId: string, onProgress: (fraction: number) => void): Result<JobPlan> {
    return planJob(yard, jobId, { onProgress });
  },
};

export type PlanWork = typeof planWork;

expose(planWork);
