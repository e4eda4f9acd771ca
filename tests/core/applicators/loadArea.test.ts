import { expect, test } from 'vitest';
import { loadAreaM2 } from '../../../core/applicators/index.ts';
import { FLUID_OUNCE_L, GALLON_L, THOUSAND_FT2_M2 } from '../../../core/units/index.ts';
import { applicatorWith, galPer1000Ft2, productWith } from '../../support/products.ts';

test('a tank of mix covers its capacity by the carrier volume, whatever the rate', () => {
  for (const rateLPerM2 of [0.0001, 0.002]) {
    const areaM2 = loadAreaM2(productWith({ rateLPerM2 }), applicatorWith());
    expect((areaM2 / THOUSAND_FT2_M2) * 1000).toBeCloseTo(3200, 8); // Colorado State CEPEP 204 method: 4 gal ÷ 1.25 gal/1,000 ft²
  }
});

test('a hose-end bottle covers its capacity by the rate, whatever the carrier', () => {
  for (const gal of [1, 5]) {
    const bottle = applicatorWith({
      kind: 'hose-end',
      capacityL: 32 * FLUID_OUNCE_L,
      carrierLPerM2: galPer1000Ft2(gal),
    });
    expect(loadAreaM2(productWith(), bottle) / THOUSAND_FT2_M2).toBeCloseTo(32 / 3, 10); // 32 fl oz ÷ 3 fl oz/1,000 ft²
  }
});

test('twice the tank covers twice the ground', () => {
  const once = loadAreaM2(productWith(), applicatorWith());
  expect(loadAreaM2(productWith(), applicatorWith({ capacityL: 8 * GALLON_L }))).toBeCloseTo(2 * once, 9); // proportion
});
