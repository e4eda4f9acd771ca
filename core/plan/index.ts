/**
 * Plan: from outlines to what is walked and what goes into each load.
 *
 * In: resolved zones and a request, or a yard and one of its jobs. Out: sections, passes in walking order, measured
 * coverage, figures that add up, and a mix for each load. Method: the planners of sections, passes and loads, one
 * after the other. Out of scope: how a plan is drawn or printed.
 */
export { headingDegOf } from './headingDegOf.ts';
export { loadSigmas } from './loadSigmas.ts';
export { type LoadUse, loadUses } from './loadUse.ts';
export { leastLoads } from './leastLoads.ts';
export type { GroundPlan, JobPlan, PlanLoad, PlanRequest, SectionFigures } from './plan.ts';
export { type GroundControl, planGround } from './planGround.ts';
export { type JobControl, planJob } from './planJob.ts';
export { planRequestOf } from './planRequest.ts';
export { comparePolicies, type PolicyFigures } from './policies.ts';
export { sectionSigmas } from './sectionSigmas.ts';
