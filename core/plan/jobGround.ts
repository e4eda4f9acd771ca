import { checkApplicator, loadAreaM2 } from '../applicators/index.ts';
import { checkCarrier, checkRate } from '../products/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Applicator, Job, Product, Yard } from '../yard.ts';
import { type ResolvedYard, resolveZones } from '../zones/index.ts';
import type { PlanRequest } from './plan.ts';
import { planRequestOf } from './planRequest.ts';

/** A job with all that planning it takes. */
export interface JobGround {
  readonly job: Job;
  readonly product: Product;
  readonly applicator: Applicator;
  /** The zones of the job alone. */
  readonly resolved: ResolvedYard;
  readonly request: PlanRequest;
  /** What the label checks had to say. */
  readonly warnings: readonly Problem[];
}

/**
 * Everything a plan of the job is made from.
 *
 * @param jobId of a job of this yard
 * Problems: value/missing (job, product, applicator or a figure of them), value/not-positive,
 * value/rate-over-label, value/carrier-under-label, value/rate-over-carrier, plan/nothing-to-treat, and those
 * of resolveZones
 */
export function jobGround(yard: Yard, jobId: string): Result<JobGround> {
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
  return ok({ ...parts.value, resolved, request, warnings: allowed.value });
}

/** The job with its product and applicator, or which of them is missing. */
function partsOf(yard: Yard, jobId: string): Result<Pick<JobGround, 'job' | 'product' | 'applicator'>> {
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
