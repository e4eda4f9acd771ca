import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Applicator, Product } from '../yard.ts';

/** A rate and a volume typed in different units may differ by the rounding of their conversion. */
const SAME_VOLUME = 1e-9;

/**
 * Whether an applicator has all the figures a plan needs, and a tank room for the product in its mix.
 *
 * Problems: value/missing, value/not-positive (each figure by name), value/rate-over-carrier
 */
export function checkApplicator(product: Product, applicator: Applicator): Result<null> {
  const figures = [
    ['Capacity', applicator.capacityL],
    ['Carrier volume', applicator.carrierLPerM2],
    ['Swath', applicator.swathM],
    ['Pace', applicator.paceMPerS],
  ] as const;
  const problems = figures.flatMap(([name, value]): Problem[] => {
    const where = { field: `${name} of ${applicator.name}` };
    if (!Number.isFinite(value)) return [{ kind: 'value/missing', where, facts: {} }];
    return value > 0 ? [] : [{ kind: 'value/not-positive', where, facts: {} }];
  });
  const { carrierLPerM2 } = applicator;
  if (applicator.kind === 'tank' && carrierLPerM2 > 0) {
    if (product.rateLPerM2 > carrierLPerM2 * (1 + SAME_VOLUME)) {
      problems.push({
        kind: 'value/rate-over-carrier',
        where: { field: `Carrier volume of ${applicator.name}` },
        facts: { rateLPerM2: product.rateLPerM2, carrierLPerM2 },
      });
    }
  }
  const [first, ...more] = problems;
  return first === undefined ? ok(null) : trouble(first, ...more);
}
