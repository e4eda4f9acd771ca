import { regionContains } from '../../core/kernel/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import type { YardPoint } from '../../core/spaces.ts';

/** The section a click falls in; undefined off the treated ground. */
export function sectionAt(plan: GroundPlan, at: YardPoint): string | undefined {
  return plan.sections.find(({ region }) => regionContains(region, at))?.id;
}
