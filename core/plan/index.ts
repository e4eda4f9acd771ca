export type { GroundPlan, JobPlan, PlanRequest, SectionFigures } from './plan.ts';
export { type GroundControl, planGround } from './planGround.ts';
export { planJob } from './planJob.ts';
