import { expect, test } from 'vitest';
import { checkCarrier } from '../../../core/products/index.ts';
import type { ProductUse } from '../../support/products.ts';
import { galPer1000Ft2, productWith } from '../../support/products.ts';

/** The kinds said about a carrier volume in gal per 1,000 ft²; 'refused' before those that stop the plan. */
function said(gal: number, leastGal: number | null = null, use: ProductUse = 'fertilizer'): string[] {
  const leastCarrierLPerM2 = leastGal === null ? null : galPer1000Ft2(leastGal);
  const checked = checkCarrier(productWith({ use, leastCarrierLPerM2 }), galPer1000Ft2(gal), 'Back tank');
  const kinds = (checked.ok ? checked.value : checked.problems).map((problem) => problem.kind);
  return checked.ok ? kinds : ['refused', ...kinds];
}

test('less carrier than the label asks for is refused for a pesticide and told for the rest', () => {
  expect(said(1, 2, 'pesticide')).toEqual(['refused', 'value/carrier-under-label']); // 1 < 2
  expect(said(1, 2)).toEqual(['value/carrier-under-label']); // 1 < 2
  expect(said(2, 2, 'pesticide')).toEqual([]); // at the least
});

test('a volume no lawn label spans is told, the ends of the band are not', () => {
  expect(said(0.1)).toEqual([]); // UF/IFAS PI-225: labels span 0.1 to 5.0 gal/1,000 ft²
  expect(said(5)).toEqual([]); // the same
  expect(said(0.09)).toEqual(['value/carrier-unusual']); // below it
  expect(said(5.1)).toEqual(['value/carrier-unusual']); // above it
});

test('what is told names the applicator', () => {
  const checked = checkCarrier(productWith(), galPer1000Ft2(50), 'Back tank');
  expect(checked.ok && checked.value[0]?.where).toEqual({ field: 'Carrier volume of Back tank' }); // the name given
});
