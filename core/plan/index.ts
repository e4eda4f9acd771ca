export type { GroundPlan, JobPlan, PlanRequest, SectionFigures } from './plan.ts';
