import { tapeMarkM } from '../../core/sections/index.ts';
import {
  type GroundControl,
  type JobPlan,
  planGround,
  planJob,
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
      headingDeg: flags.headingDeg === undefined ? job.headingDeg : flags.headingDeg,
    };
    const planned = planJob({ ...yard, jobs: [chosen] }, chosen.id, control);
    return planned.ok ? ok({ yard, job: chosen, plan: planned.value, hasMix: true }) : planned;
  }
  const { loadAreaM2, swathM } = flags;
  if (loadAreaM2 === undefined || swathM === undefined) return undefined;
  const resolved = resolveZones(yard);
  if (!resolved.ok) return resolved;
  const policy = flags.policy ?? 'even';
  const headingDeg = flags.headingDeg ?? null;
  const markM = tapeMarkM(yard.details.unitSystem);
  const request = { loadAreaM2, swathM, paceMPerS: USUAL_PACE_M_PER_S, policy, headingDeg, markM };
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
  return ok({ ...withStandIns(yard, swathM, policy, headingDeg), plan, hasMix: false });
}

/** The sheet names a product and an applicator; where none is chosen it says so in their place. */
function withStandIns(
  yard: Yard,
  swathM: number,
  policy: Job['policy'],
  headingDeg: Job['headingDeg'],
): { readonly yard: Yard; readonly job: Job } {
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
  };
  const job: Job = {
    id: 'no-job',
    name: 'Sections and passes',
    zoneIds: null,
    productId: product.id,
    applicatorId: applicator.id,
    policy,
    headingDeg,
  };
  return { yard: { ...yard, products: [product], applicators: [applicator], jobs: [job] }, job };
}
