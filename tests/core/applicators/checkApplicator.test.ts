import { expect, test } from 'vitest';
import { checkApplicator } from '../../../core/applicators/index.ts';
import { applicatorWith, galPer1000Ft2, productWith } from '../../support/products.ts';

test('an applicator with all its figures passes', () => {
  expect(checkApplicator(productWith(), applicatorWith())).toEqual({ ok: true, value: null });
});

test('every figure that is missing or nought is named', () => {
  const checked = checkApplicator(
    productWith(),
    applicatorWith({ capacityL: 0, swathM: Number.NaN, paceMPerS: -1 }),
  );
  expect(checked).toEqual({
    ok: false,
    problems: [
      { kind: 'value/not-positive', where: { field: 'Capacity of Back tank' }, facts: {} }, // 0
      { kind: 'value/missing', where: { field: 'Swath of Back tank' }, facts: {} }, // NaN
      { kind: 'value/not-positive', where: { field: 'Pace of Back tank' }, facts: {} }, // -1
    ],
  });
});

test('a tank whose whole mix is less than its product is refused, a hose-end sprayer is not', () => {
  const product = productWith({ rateLPerM2: galPer1000Ft2(2) });
  const tank = checkApplicator(product, applicatorWith());
  expect(tank.ok ? '' : tank.problems[0].kind).toBe('value/rate-over-carrier'); // 2 > 1.25 gal/1,000 ft²
  expect(checkApplicator(product, applicatorWith({ kind: 'hose-end' })).ok).toBe(true);
  expect(checkApplicator(productWith({ rateLPerM2: galPer1000Ft2(1.25) }), applicatorWith()).ok).toBe(true); // undiluted
});
