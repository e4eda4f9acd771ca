import fc from 'fast-check';
import { expect, test } from 'vitest';
import { productAmountL } from '../../../core/products/index.ts';
import { FLUID_OUNCE_L, squareMetres, THOUSAND_FT2_M2 } from '../../../core/units/index.ts';
import { flOzPer1000Ft2, productWith } from '../../support/products.ts';

test('the amount is rate times area', () => {
  const amountL = productAmountL(productWith(), squareMetres(6.8 * THOUSAND_FT2_M2));
  expect(amountL / FLUID_OUNCE_L).toBeCloseTo(20.4, 10); // Colorado State CEPEP 204 method: 6.8 × 3 fl oz
  const sixOunces = productWith({ rateLPerM2: flOzPer1000Ft2(6) });
  const perThousandL = productAmountL(sixOunces, squareMetres(THOUSAND_FT2_M2));
  const poundsPerFlOz = 10.68 / 128; // Virginia Coop. Ext. 424-035 worked by M. Woods: 10.68 lb/gal is 0.0834 lb/fl oz
  expect((perThousandL / FLUID_OUNCE_L) * poundsPerFlOz).toBeCloseTo(0.5, 2); // the same: 0.50 lb product per 1,000 ft²
});

test('parts of the ground take parts of the amount', () => {
  const areas = fc.double({ min: 0, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(areas, areas, (oneM2, otherM2) => {
      const product = productWith();
      const apart =
        productAmountL(product, squareMetres(oneM2)) + productAmountL(product, squareMetres(otherM2));
      const together = productAmountL(product, squareMetres(oneM2 + otherM2));
      expect(Math.abs(apart - together)).toBeLessThanOrEqual(1e-12 * (1 + together));
    }),
  );
});
