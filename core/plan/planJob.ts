import { type LoadGround, type LoadMix, mixLoads } from '../applicators/index.ts';
import { Defect, ok, type Result } from '../result.ts';
import type { Section } from '../sections/index.ts';
import type { Yard } from '../yard.ts';
import { jobGround } from './jobGround.ts';
import { loadSigmas } from './loadSigmas.ts';
import type { GroundPlan, JobPlan } from './plan.ts';
import { type GroundControl, planGround } from './planGround.ts';
import { sectionSigmas } from './sectionSigmas.ts';

/** How the plan of a job is watched and stopped. */
export interface JobControl extends Omit<GroundControl, 'onBetter'> {
  /** Given a whole plan while a better one is still sought. */
  readonly onBetter?: (plan: JobPlan) => void;
}

/**
 * The whole plan of one job: its zones resolved, cut into sections of at most one load each, walked, and mixed.
 *
 * @param jobId of a job of this yard
 * @returns mixes in the order the sections are walked; what the label checks had to say stands among the
 * warnings of the ground plan
 * Problems: those of jobGround and planGround, plan/cancelled among them
 */
export function planJob(yard: Yard, jobId: string, control: JobControl = {}): Result<JobPlan> {
  const whole = jobGround(yard, jobId);
  if (!whole.ok) return whole;
  const { product, applicator, resolved, request, warnings } = whole.value;
  const jobPlanOf = (plan: GroundPlan): JobPlan => {
    const ground = { ...plan, warnings: [...warnings, ...plan.warnings] };
    return {
      ground,
      sectionSigmas: sectionSigmas(yard, ground),
      loadSigmas: loadSigmas(yard, ground),
      ...totalsOf(mixLoads(loadGrounds(ground), product, applicator)),
    };
  };
  const { isCancelled, onProgress, onBetter } = control;
  const planned = planGround(resolved, request, {
    ...(isCancelled && { isCancelled }),
    ...(onProgress && { onProgress }),
    ...(onBetter && { onBetter: (plan: GroundPlan) => onBetter(jobPlanOf(plan)) }),
  });
  return planned.ok ? ok(jobPlanOf(planned.value)) : planned;
}

/** Sections by their first pass; one too narrow for any pass comes last, so that its amount is not lost. */
function inWalkingOrder(ground: GroundPlan): readonly Section[] {
  const firstPass = new Map<string, number>();
  for (const pass of ground.passes) {
    const known = firstPass.get(pass.sectionId) ?? Number.POSITIVE_INFINITY;
    firstPass.set(pass.sectionId, Math.min(known, pass.order));
  }
  const orderOf = (section: Section): number => firstPass.get(section.id) ?? Number.MAX_SAFE_INTEGER;
  return [...ground.sections].sort((a, b) => orderOf(a) - orderOf(b));
}

/** The sections' areas in the terms the yard's amounts are worked out in, in walking order. */
function loadGrounds(ground: GroundPlan): readonly LoadGround[] {
  const factors = new Map(ground.resolved.zones.map((zone) => [zone.zoneId, zone.amountFactor]));
  return inWalkingOrder(ground).map(({ id, zoneId, areaM2 }) => {
    return { id, areaM2: areaM2 * (factors.get(zoneId) ?? 1) };
  });
}

function totalsOf(mixes: readonly LoadMix[]): Pick<JobPlan, 'mixes' | 'productTotalL' | 'carrierTotalL'> {
  const productTotalL = mixes.reduce((sum, mix) => sum + mix.productL, 0);
  const carrierTotalL = mixes.reduce((sum, mix) => sum + mix.carrierL, 0);
  if (!Number.isFinite(productTotalL + carrierTotalL)) throw new Defect('a mix is no number');
  return { mixes, productTotalL, carrierTotalL };
}
