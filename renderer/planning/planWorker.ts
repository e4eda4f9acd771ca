import { expose } from 'comlink';
import { comparePolicies, type JobPlan, type PolicyFigures, planJob } from '../../core/plan/index.ts';
import type { Result } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';

/** Runs the planner off the window's thread; the window ends the whole worker to cancel it. */
const planWork = {
  plan(
    yard: Yard,
    jobId: string,
    onProgress: (fraction: number) => void,
    onBetter: (plan: JobPlan) => void,
  ): Result<JobPlan> {
    return planJob(yard, jobId, { onProgress, onBetter });
  },

  policies(yard: Yard, jobId: string): Result<readonly [PolicyFigures, PolicyFigures]> {
    return comparePolicies(yard, jobId);
  },
};

export type PlanWork = typeof planWork;

expose(planWork);
