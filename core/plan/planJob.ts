import {
  checkApplicator,
  loadAreaM2,
  type LoadGround,
  type LoadMix,
  mixLoads,
} from '../applicators/index.ts';
import { checkCarrier, checkRate } from '../products/index.ts';
import type { Problem } from '../problems.ts';
import { Defect, ok, type Result, trouble } from '../result.ts';
import type { Section } from '../sections/index.ts';
import type { Applicator, Job, Product, Yard } from '../yard.ts';
import { type ResolvedYard, resolveZones } from '../zones/index.ts';
import type { GroundPlan, JobPlan } from './plan.ts';
import { type GroundControl, planGround } from './planGround.ts';
import { planRequestOf } from './planRequest.ts';
import { sectionSigmas } from './sectionSigmas.ts';

/**
 * The whole plan of one job: its zones resolved, cut into sections of at most one load each, walked, and mixed.
 *
 * @param jobId of a job of this yard
 * @returns mixes in the order the sections are walked; what the label checks had to say stands among the
 * warnings of the ground plan
 * Problems: value/missing (job, product, applicator or a figure of them), value/not-positive,
 * value/rate-over-label, value/carrier-under-label, value/rate-over-carrier, plan/nothing-to-treat, and those
 * of resolveZones and planGround, plan/cancelled among them
 */
export function planJob(yard: Yard, jobId: string, control?: GroundControl): Result<JobPlan> {
  const parts = partsOf(yard, jobId);
  if (!parts.ok) return parts;
  const { job, product, applicator } = parts.value;
  const allowed = checkLabel(product, applicator);
  if (!allowed.ok) return allowed;

  const whole = resolveZones(yard);
  if (!whole.ok) return whole;
  const resolved = zonesOf(job, whole.value);
  if (!resolved.zones.some((zone) => zone.treatedAreaM2 > 0)) {
    return trouble({ kind: 'plan/nothing-to-treat', where: { thing: job.name }, facts: {} });
  }

  const request = planRequestOf(yard, job, applicator, loadAreaM2(product, applicator));
  const planned = planGround(resolved, request, control);
  if (!planned.ok) return planned;
  const ground = { ...planned.value, warnings: [...allowed.value, ...planned.value.warnings] };
  const sigmas = sectionSigmas(yard, ground);
  return ok({
    ground,
    sectionSigmas: sigmas,
    ...totalsOf(mixLoads(loadGrounds(ground), product, applicator)),
  });
}

/** The job with its product and applicator, or which of them is missing. */
function partsOf(
  yard: Yard,
  jobId: string,
): Result<{ readonly job: Job; readonly product: Product; readonly applicator: Applicator }> {
  const job = yard.jobs.find((other) => other.id === jobId);
  if (job === undefined) return missing('job');
  const product = yard.products.find((other) => other.id === job.productId);
  if (product === undefined) return missing(`product of ${job.name}`);
  const applicator = yard.applicators.find((other) => other.id === job.applicatorId);
  if (applicator === undefined) return missing(`applicator of ${job.name}`);
  return ok({ job, product, applicator });
}

function missing(field: string): Result<never> {
  return trouble({ kind: 'value/missing', where: { field }, facts: {} });
}

/** Whether label and applicator allow the job at all; the value is what is to be told all the same. */
function checkLabel(product: Product, applicator: Applicator): Result<readonly Problem[]> {
  // A job has no place for a reason yet, so every rate over a label is refused.
  const rate = checkRate(product, null);
  if (!rate.ok) return rate;
  const figures = checkApplicator(product, applicator);
  if (!figures.ok) return figures;
  const carrier = checkCarrier(product, applicator.carrierLPerM2, applicator.name);
  return carrier.ok ? ok([...rate.value, ...carrier.value]) : carrier;
}

/**
 * The job's zones of a yard that was resolved whole, so that ground shared with a zone outside the job stays
 * with its owner.
 */
function zonesOf(job: Job, whole: ResolvedYard): ResolvedYard {
  const { zoneIds } = job;
  if (zoneIds === null) return whole;
  return { ...whole, zones: whole.zones.filter((zone) => zoneIds.includes(zone.zoneId)) };
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

function totalsOf(mixes: readonly LoadMix[]): Omit<JobPlan, 'ground' | 'sectionSigmas'> {
  const productTotalL = mixes.reduce((sum, mix) => sum + mix.productL, 0);
  const carrierTotalL = mixes.reduce((sum, mix) => sum + mix.carrierL, 0);
  if (!Number.isFinite(productTotalL + carrierTotalL)) throw new Defect('a mix is no number');
  return { mixes, productTotalL, carrierTotalL };
}
