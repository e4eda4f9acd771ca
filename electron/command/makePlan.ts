import { USUAL_STEP_M } from '../../core/applicators/index.ts';
import { newJob } from '../../core/edits/index.ts';
import {
  type GroundControl,
  type JobPlan,
  planGround,
  planJob,
  planRequestOf,
  loadSigmas,
  sectionSigmas,
} from '../../core/plan/index.ts';
import { ok, type Result } from '../../core/result.ts';
import type { Applicator, Job, Product, Yard } from '../../core/yard.ts';
import { resolveZones } from '../../core/zones/index.ts';
import { askedJob } from './askedJob.ts';
import type { PlanFlags } from './planFlags.ts';

/** The command waits for the last plan; it needs no better one on the way. */
type Watch = Pick<GroundControl, 'isCancelled' | 'onProgress'>;

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
 * By the yard's newest job, as the window, with what the flags ask in place of its own; with a load area or swath given,
 * by the flags alone and without a mix. Undefined when there is neither a job nor both figures.
 * Problems: those of askedJob, planJob, resolveZones and planGround
 */
export function makePlan(yard: Yard, flags: PlanFlags, control: Watch): Result<MadePlan> | undefined {
  const { loadAreaM2, swathM } = flags;
  const job = yard.jobs.at(-1);
  if (job !== undefined && loadAreaM2 === undefined && swathM === undefined) {
    return planOfJob(yard, job, flags, control);
  }
  if (loadAreaM2 === undefined || swathM === undefined) return undefined;
  return planOfGround(yard, { loadAreaM2, swathM }, flags, control);
}

function planOfJob(yard: Yard, job: Job, flags: PlanFlags, control: Watch): Result<MadePlan> {
  const asked = askedJob(yard, job, flags);
  if (!asked.ok) return asked;
  const applicators = yard.applicators.map((row) =>
    row.id === job.applicatorId ? { ...row, ...paceOf(flags, row) } : row,
  );
  const shown = { ...yard, applicators, jobs: [asked.value] };
  const planned = planJob(shown, job.id, control);
  return planned.ok ? ok({ yard: shown, job: asked.value, plan: planned.value, hasMix: true }) : planned;
}

function paceOf({ paceMPerS, stepM }: PlanFlags, usual: Pick<Applicator, 'paceMPerS' | 'stepM'>) {
  return { paceMPerS: paceMPerS ?? usual.paceMPerS, stepM: stepM ?? usual.stepM };
}

function planOfGround(
  yard: Yard,
  { loadAreaM2, swathM }: { readonly loadAreaM2: number; readonly swathM: number },
  flags: PlanFlags,
  control: Watch,
): Result<MadePlan> {
  const resolved = resolveZones(yard);
  if (!resolved.ok) return resolved;
  const { product, applicator, job } = standInsFor(flags, swathM);
  const asked = askedJob(yard, job, flags);
  if (!asked.ok) return asked;
  const request = planRequestOf(yard, asked.value, applicator, loadAreaM2);
  const ground = planGround(resolved.value, request, control);
  if (!ground.ok) return ground;
  // One empty mix a section: the sheet numbers its loads by them, and prints no mix page when nothing is poured.
  const mixes = ground.value.sections.map(({ id, areaM2 }) => {
    return { sectionId: id, areaM2, productL: 0, carrierL: 0, dialRatio: null };
  });
  const plan: JobPlan = {
    ground: ground.value,
    mixes,
    sectionSigmas: sectionSigmas(yard, ground.value),
    loadSigmas: loadSigmas(yard, ground.value),
    productTotalL: 0,
    carrierTotalL: 0,
  };
  const shown = { ...yard, products: [product], applicators: [applicator], jobs: [asked.value] };
  return ok({ yard: shown, job: asked.value, plan, hasMix: false });
}

/** The sheet names a product and an applicator; where none is chosen it says so in their place. */
function standInsFor(flags: PlanFlags, swathM: number) {
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
    ...paceOf(flags, { paceMPerS: USUAL_PACE_M_PER_S, stepM: USUAL_STEP_M }),
  };
  const job = newJob({
    id: 'no-job',
    name: 'Sections and passes',
    productId: product.id,
    applicatorId: applicator.id,
  });
  return { product, applicator, job };
}
