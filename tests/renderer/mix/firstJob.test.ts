import { expect, test } from 'vitest';
import type { Applicator, Product } from '../../../core/yard.ts';
import { withFirstJob } from '../../../renderer/mix/firstJob.ts';
import { newYard } from '../../../renderer/yards/newYard.ts';

const yard = newYard('Test yard', '2026-05-12', 'metric');
const product: Product = {
  id: 'p',
  name: 'Feed',
  use: 'fertilizer',
  rateLPerM2: 0.001,
  mostRateLPerM2: null,
  leastCarrierLPerM2: null,
};
const applicator: Applicator = {
  id: 's',
  name: 'Sprayer',
  kind: 'tank',
  capacityL: 15,
  carrierLPerM2: 0.08,
  swathM: 1.8,
  paceMPerS: 0.6,
  stepM: 0.7,
};

test('a product alone, or a sprayer alone, makes no job', () => {
  expect(withFirstJob(yard, { product }, () => 'j')).toEqual([]);
  expect(withFirstJob(yard, { applicator }, () => 'j')).toEqual([]);
});

test('the second of the two brings the first job with it, and only the first', () => {
  const [change] = withFirstJob({ ...yard, products: [product] }, { applicator }, () => 'j');
  expect(change?.after).toMatchObject({ id: 'j', productId: 'p', applicatorId: 's', zoneIds: null });
  const job = change?.after as never;
  expect(withFirstJob({ ...yard, products: [product], jobs: [job] }, { applicator }, () => 'k')).toEqual([]);
});
