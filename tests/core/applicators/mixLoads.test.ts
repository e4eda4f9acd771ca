import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadAreaM2, mixLoads } from '../../../core/applicators/index.ts';
import {
  ACRE_M2,
  apportionForDisplay,
  FLUID_OUNCE_L,
  formatVolume,
  GALLON_L,
  litres,
  SQUARE_FOOT_M2,
  THOUSAND_FT2_M2,
  sum,
  volumeStepL,
  volumeUnitFor,
} from '../../../core/units/index.ts';
import { applicatorWith, flOzPer1000Ft2, galPer1000Ft2, productWith } from '../../support/products.ts';

const ground = (...areasFt2: readonly number[]) =>
  areasFt2.map((areaFt2, i) => ({ id: `A${i + 1}`, areaM2: areaFt2 * SQUARE_FOOT_M2 }));

describe('a tank', () => {
  test('of a 6,800 ft² job takes two full loads and a last partial one', () => {
    // Colorado State CEPEP fact sheet 204, method: coverage per gallon × capacity, job ÷ that; 6,800 ft²,
    // 1.25 gal/1,000 ft², 4 gal tank, 3 fl oz/1,000 ft²
    const perLoadFt2 = loadAreaM2(productWith(), applicatorWith()) / SQUARE_FOOT_M2;
    expect(perLoadFt2).toBeCloseTo(3200, 8); // the method: 4 ÷ 1.25 thousand ft²
    expect(Math.ceil(6800 / perLoadFt2)).toBe(3); // the method: 6,800 ÷ 3,200 = 2.125, rounded up
    const mixes = mixLoads(ground(3200, 3200, 400), productWith(), applicatorWith());
    const flOz = mixes.map((mix) => mix.productL / FLUID_OUNCE_L);
    [9.6, 9.6, 1.2].forEach((expected, i) => {
      expect(flOz[i]).toBeCloseTo(expected, 10); // the method: 3 fl oz × 3.2, 3.2, 0.4
    });
    const filled = mixes.map((mix) => (mix.productL + mix.carrierL) / GALLON_L);
    [4, 4, 0.5].forEach((expected, i) => {
      expect(filled[i]).toBeCloseTo(expected, 10); // the method: 1.25 gal × 3.2, 3.2, 0.4
    });
    expect(formatVolume(sum(mixes.map((mix) => mix.productL)), 'us')).toBe('20.4 fl oz'); // 9.6 + 9.6 + 1.2
    expect(mixes.map((mix) => mix.dialRatio)).toEqual([null, null, null]); // a tank has no dial
  });

  test('with less than a full load is filled for the ground there is', () => {
    // agriculture reference text (what-when-how.com, "less than a full tank"): 3.5 ac at 15 gal/ac, 3 units/ac
    const carrierLPerM2 = (15 * GALLON_L) / ACRE_M2;
    const rateLPerM2 = (3 * FLUID_OUNCE_L) / ACRE_M2;
    const [mix] = mixLoads(
      [{ id: 'A1', areaM2: 3.5 * ACRE_M2 }],
      productWith({ rateLPerM2 }),
      applicatorWith({ carrierLPerM2 }),
    );
    if (mix === undefined) throw new Error('one section makes one mix');
    expect((mix.productL + mix.carrierL) / GALLON_L).toBeCloseTo(52.5, 9); // the text: 52.5 gal
    expect(mix.productL / FLUID_OUNCE_L).toBeCloseTo(10.5, 9); // the text: 10.5 of the product's unit
  });

  test('of a product sprayed undiluted needs no carrier at all', () => {
    const rateLPerM2 = galPer1000Ft2(1.25);
    const [mix] = mixLoads(ground(1000), productWith({ rateLPerM2 }), applicatorWith());
    expect(mix?.carrierL).toBe(0); // rate = carrier volume: all of it is product
  });
});

describe('a hose-end sprayer', () => {
  // NC Cooperative Extension, hose-end sprayer calibration: 5 gal/1,000 ft² through the hose; Montana State
  // MT200015AG: product used = dial (fl oz per gal) × gallons put down
  const hoseEnd = applicatorWith({
    kind: 'hose-end',
    capacityL: 32 * FLUID_OUNCE_L,
    carrierLPerM2: galPer1000Ft2(5),
  });

  test('is dialled so that dial times water is the label rate', () => {
    const [mix] = mixLoads(ground(1000), productWith(), hoseEnd);
    const flOzPerGal = ((mix?.dialRatio ?? 0) * GALLON_L) / FLUID_OUNCE_L;
    expect(flOzPerGal).toBeCloseTo(0.6, 12); // the above: 3 fl oz ÷ 5 gal
    const oneOunceDial = mixLoads(ground(1000), productWith({ rateLPerM2: flOzPer1000Ft2(5) }), hoseEnd);
    expect(((oneOunceDial[0]?.dialRatio ?? 0) * GALLON_L) / FLUID_OUNCE_L).toBeCloseTo(1, 12); // the above: 5 fl oz ÷ 5 gal
  });

  test('has its product poured in undiluted and its water come through the hose', () => {
    const [mix] = mixLoads(ground(2000), productWith(), hoseEnd);
    expect((mix?.productL ?? 0) / FLUID_OUNCE_L).toBeCloseTo(6, 10); // 2 × 3 fl oz
    expect((mix?.carrierL ?? 0) / GALLON_L).toBeCloseTo(10, 10); // 2 × 5 gal
  });
});

describe('the loads of a job', () => {
  const areas = fc.array(fc.double({ min: 0.5, max: 600, noNaN: true }), { minLength: 1, maxLength: 30 });
  const rates = fc.double({ min: 0.1, max: 30, noNaN: true });
  const kinds = fc.constantFrom('tank' as const, 'hose-end' as const);

  test('take together what the whole ground takes', () => {
    fc.assert(
      fc.property(areas, rates, kinds, (areasM2, flOz, kind) => {
        const product = productWith({ rateLPerM2: flOzPer1000Ft2(flOz) });
        const sections = areasM2.map((areaM2, i) => ({ id: `A${i}`, areaM2 }));
        const mixes = mixLoads(sections, product, applicatorWith({ kind }));
        const whole = areasM2.reduce((sum, areaM2) => sum + areaM2, 0);
        const productL = mixes.reduce((sum, mix) => sum + mix.productL, 0);
        expect(productL / (whole * product.rateLPerM2)).toBeCloseTo(1, 12); // rate × whole area
      }),
    );
  });

  test('print amounts that add up to the printed job, to the last digit, in 10,000 random jobs', () => {
    fc.assert(
      fc.property(areas, rates, fc.constantFrom('us' as const, 'metric' as const), (areasM2, flOz, units) => {
        const product = productWith({ rateLPerM2: flOzPer1000Ft2(flOz) });
        const sections = areasM2.map((areaM2, i) => ({ id: `A${i}`, areaM2 }));
        const amounts = mixLoads(sections, product, applicatorWith()).map((mix) => litres(mix.productL));
        const totalL = sum(amounts);
        const unit = volumeUnitFor(Math.max(...amounts), units);
        const shown = apportionForDisplay(amounts, volumeStepL(unit), totalL);
        const lastDigits = (volumeL: number) =>
          Number(formatVolume(volumeL, units, unit).replace(/[^\d]/g, ''));
        const digits = sum(shown.map(lastDigits));
        expect(digits).toBe(Math.round(totalL / volumeStepL(unit)));
        expect(digits).toBe(lastDigits(sum(shown)));
      }),
      { numRuns: 10_000, seed: 20261125 },
    );
  });

  test('are one for each section, in their order, each with its own area', () => {
    const mixes = mixLoads(ground(1000, 250), productWith(), applicatorWith());
    expect(mixes.map((mix) => mix.sectionId)).toEqual(['A1', 'A2']); // the order given
    expect(mixes[1]?.areaM2).toBeCloseTo(THOUSAND_FT2_M2 / 4, 12); // 250 ft²
  });
});
