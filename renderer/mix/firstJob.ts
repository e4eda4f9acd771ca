import { type Change, newJob, putRow } from '../../core/edits/index.ts';
import type { Applicator, Product, Yard } from '../../core/yard.ts';

interface Arriving {
  readonly product?: Product;
  readonly applicator?: Applicator;
}

/**
 * The first job of a yard comes of itself as soon as there is a product and a sprayer to do it with: every
 * zone, even loads, lanes as the plan picks them. Nothing when there is a job already or one of the two lacks.
 */
export function withFirstJob(yard: Yard, arriving: Arriving, makeId: () => string): readonly Change[] {
  const product = arriving.product ?? yard.products[0];
  const applicator = arriving.applicator ?? yard.applicators[0];
  if (yard.jobs.length > 0 || !product || !applicator) return [];
  return [
    putRow(
      yard,
      'jobs',
      newJob({
        id: makeId(),
        name: product.name,
        productId: product.id,
        applicatorId: applicator.id,
      }),
    ),
  ];
}
