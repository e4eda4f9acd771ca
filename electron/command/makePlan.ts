import { USUAL_STEP_M } from '../../core/applicators/index.ts';
import { newJob } from '../../core/edits/index.ts';
import {
  type GroundControl,
  type JobPlan,
  planGround,
  planJob,
  planRequestOf,
  sectionSigmas,
} from '../../core/plan/index.ts';
import { ok, type Result } from '../../core/result.ts';
import type { Applicator, Job, Product, Yard } from '../../core/yard.ts';
import { resolveZones } from '../../core/zones/index.ts';
import type { PlanFlags } from './planRequest.ts';

/** A plan with what the sheet needs beside it. `hasMix` false = walked only, nothing is poured. */
export interface MadePlan {
  readonly yard: Yard;
  readonly job: Job;
  readonly plan: JobPlan;
  readonly hasMix: boolean;
}

/** Slow enough to aim and even enough to keep up; only times depend on it. */
const USUAL_PACE_M_PER_S = 0.9;

/**
 * By the yard's first job, with heading and policy from the flags where given; with a load area or swath given,
 * by those alone and without a mix. Undefined when there is neither a job nor both figures.
 * Problems: those of planJob, resolveZones and planGround
 */
export function makePlan(yard: Yard, flags: PlanFlags, control: GroundControl): Result<MadePlan> | undefined {
  const [job] = yard.jobs;
  const isByJob = job !== undefined && flags.loadAreaM2 === undefined && flags.swathM === undefined;
  if (isByJob) {
    const chosen: Job = {
      ...job,
      policy: flags.policy ?? job.policy,
      heading: flags.heading ?? job.heading,
    };
    const planned = planJob({ ...yard, jobs: [chosen] }, chosen.id, control);
    return planned.ok ? ok({ yard, job: chosen, plan: planned.value, hasMix: true }) : planned;
  }
  const { loadAreaM2, swathM } = flags;
  if (loadAreaM2 === undefined || swathM === undefined) return undefined;
  const resolved = resolveZones(yard);
  if (!resolved.ok) return resolved;
  const standIns = standInsFor(flags, swathM);
  const request = planRequestOf(yard, standIns.job, standIns.applicator, loadAreaM2);
  const ground = planGround(resolved.value, request, control);
  if (!ground.ok) return ground;
  // One empty mix a section: the sheet numbers its loads by them, and prints no mix page when nothing is poured.
  const mixes = ground.value.sections.map(({ id, areaM2 }) => {
    return { sectionId: id, areaM2, productL: 0, carrierL: 0, dialRatio: null };
  });
  const sigmas = sectionSigmas(yard, ground.value);
  const plan: JobPlan = {
    ground: ground.value,
    mixes,
    sectionSigmas: sigmas,
    productTotalL: 0,
    carrierTotalL: 0,
  };
  const { product, applicator } = standIns;
  const shown = { ...yard, products: [product], applicators: [applicator], jobs: [standIns.job] };
  return ok({ yard: shown, job: standIns.job, plan, hasMix: false });
}

/** The sheet names a product and an applicator; where none is chosen it says so in their place. */
function standInsFor({ policy, heading }: PlanFlags, swathM: number) {
  const product: Product = {
    id: 'no-product',
    name: 'no product chosen',
    use: 'other',
    rateLPerM2: 0,
    mostRateLPerM2: null,
    leastCarrierLPerM2: null,
  };
  const applicator: Applicator = {
    id: 'no-applicator',
    name: 'no applicator chosen',
    kind: 'tank',
    capacityL: 0,
    carrierLPerM2: 0,
    swathM,
    paceMPerS: USUAL_PACE_M_PER_S,
    stepM: USUAL_STEP_M,
  };
  const job = newJob({
    id: 'no-job',
    name: 'Sections and passes',
    productId: product.id,
    applicatorId: applicator.id,
    policy: policy ?? 'even',
    heading: heading ?? { kind: 'best' },
  });
  return { product, applicator, job };
}
