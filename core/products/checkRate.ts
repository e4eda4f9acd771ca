import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Product } from '../yard.ts';

/** A rate and a limit typed in different units may differ by the rounding of their conversion. */
const SAME_RATE = 1e-9;

/**
 * Whether the product's rate is within what its label allows in one application.
 *
 * @param reason why a label limit is passed, in the person's words; null or blank = none given
 * @returns what to tell the person all the same: for anything but a pesticide a rate over the label with a
 * stated reason is a warning. A pesticide over its label is refused whatever the reason: using it contrary to
 * its labelling is a violation (FIFRA § 12(a)(2)(G), 7 U.S.C. 136j).
 * Problems: value/missing and value/not-positive (the rate), value/rate-over-label (with both rates)
 */
export function checkRate(product: Product, reason: string | null): Result<readonly Problem[]> {
  const where = { field: `Rate of ${product.name}` };
  if (!Number.isFinite(product.rateLPerM2)) return trouble({ kind: 'value/missing', where, facts: {} });
  if (product.rateLPerM2 <= 0) return trouble({ kind: 'value/not-positive', where, facts: {} });
  const mostRateLPerM2 = product.mostRateLPerM2;
  if (mostRateLPerM2 === null || product.rateLPerM2 <= mostRateLPerM2 * (1 + SAME_RATE)) return ok([]);
  const over: Problem = {
    kind: 'value/rate-over-label',
    where,
    facts: { rateLPerM2: product.rateLPerM2, mostRateLPerM2 },
  };
  const excused = product.use !== 'pesticide' && reason !== null && reason.trim() !== '';
  return excused ? ok([over]) : trouble(over);
}
