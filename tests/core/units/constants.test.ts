import { describe, expect, test } from 'vitest';
import {
  ACRE_M2,
  CUP_L,
  FLUID_OUNCE_L,
  FOOT_M,
  GALLON_L,
  HECTARE_M2,
  INCH_M,
  OUNCE_KG,
  PINT_L,
  POUND_KG,
  QUART_L,
  SQUARE_FOOT_M2,
  SQUARE_YARD_M2,
  SURVEY_ACRE_M2,
  SURVEY_FOOT_M,
  TABLESPOON_L,
  TEASPOON_L,
  THOUSAND_FT2_M2,
  YARD_M,
} from '../../../core/units/index.ts';

/** Relative agreement of two doubles that are equal on paper. */
const SAME = 1e-15;
function expectSame(actual: number, expected: number): void {
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(SAME);
}

describe('lengths and areas', () => {
  test('the international foot and what is built on it', () => {
    expect(FOOT_M).toBe(0.3048); // Federal Register 85:62698 (5 Oct 2020)
    expectSame(INCH_M * 12, 0.3048); // 12 in = 1 ft
    expectSame(YARD_M, 3 * 0.3048); // 1 yd = 3 ft
    expectSame(SQUARE_FOOT_M2, 0.3048 ** 2); // definition
    expectSame(SQUARE_YARD_M2, 9 * 0.3048 ** 2); // 1 yd² = 9 ft²
    expect(THOUSAND_FT2_M2).toBe(92.90304); // LSU AgCenter conversions (92.9), exact 1,000 × 0.3048²
    expectSame(ACRE_M2, 43_560 * 0.3048 ** 2); // Federal Register 85:62698: acre of 43,560 ft²
    expect(ACRE_M2).toBe(4046.8564224); // GNU Units 2.22, acre (international)
  });

  test('the US survey foot is another foot, two parts in a million longer', () => {
    expectSame(SURVEY_FOOT_M, 1200 / 3937); // NIST SP 447
    expect(SURVEY_FOOT_M / FOOT_M - 1).toBeCloseTo(2e-6, 8); // Federal Register 85:62698: 2 ppm
    expect(SURVEY_ACRE_M2).toBeCloseTo(4046.872609874, 9); // GNU Units 2.22, acre (US survey)
  });

  test('the hectare', () => {
    expect(HECTARE_M2 / ACRE_M2).toBeCloseTo(2.4710538, 7); // GNU Units 2.22
  });
});

describe('volumes and masses', () => {
  test('the US gallon and its parts', () => {
    expectSame(GALLON_L, 231 * (INCH_M * 10) ** 3); // NIST Handbook 44 App. C: 231 cubic inches
    expectSame(FLUID_OUNCE_L, GALLON_L / 128); // NIST Handbook 44 App. C: 128 fl oz = 1 gal
    expect(FLUID_OUNCE_L * 1000).toBe(29.5735295625); // GNU Units 2.22
    expectSame(TABLESPOON_L * 1000, 14.78676478125); // GNU Units 2.22; pested.unl.edu/math: 2 Tbsp = 1 fl oz
    expectSame(TEASPOON_L * 1000, 4.92892159375); // GNU Units 2.22; pested.unl.edu/math: 6 tsp = 1 fl oz
    expectSame(CUP_L * 16, GALLON_L); // 16 cups = 1 gal
    expectSame(PINT_L * 8, GALLON_L); // 8 pt = 1 gal
    expectSame(QUART_L * 4, GALLON_L); // 4 qt = 1 gal
  });

  test('the avoirdupois pound and ounce', () => {
    expect(POUND_KG).toBe(0.45359237); // NIST Handbook 44 App. C
    expectSame(OUNCE_KG * 16, POUND_KG); // 16 oz = 1 lb
    expectSame(OUNCE_KG * 1000, 28.349523125); // GNU Units 2.22, ounce in g
  });
});

describe('rates over ground', () => {
  test('of mass', () => {
    expect((POUND_KG * 1000) / THOUSAND_FT2_M2).toBeCloseTo(4.882428, 6); // GNU Units 2.22: 1 lb/1,000 ft² in g/m²
    expect((POUND_KG / THOUSAND_FT2_M2) * HECTARE_M2).toBeCloseTo(48.82428, 5); // GNU Units 2.22: 1 lb/1,000 ft² in kg/ha
    expect((POUND_KG / ACRE_M2) * HECTARE_M2).toBeCloseTo(1.120851, 6); // GNU Units 2.22 (NDSU prints 1.1209): kg/ha
    expect((OUNCE_KG * 1000) / THOUSAND_FT2_M2).toBeCloseTo(0.3051517, 7); // GNU Units 2.22: 1 oz/1,000 ft² in g/m²
    expect(POUND_KG / GALLON_L).toBeCloseTo(0.11982643, 8); // GNU Units 2.22: 1 lb/gal in kg/L
  });

  test('of volume', () => {
    expect((FLUID_OUNCE_L * 1000 * 100) / THOUSAND_FT2_M2).toBeCloseTo(31.832682, 6); // GNU Units 2.22: mL/100 m²
    expect((GALLON_L * 100) / THOUSAND_FT2_M2).toBeCloseTo(4.0745833, 7); // GNU Units 2.22: L/100 m²
    expect((GALLON_L / ACRE_M2) * HECTARE_M2).toBeCloseTo(9.3539562, 7); // GNU Units 2.22 (NDSU prints 9.3541): L/ha
    expect((FLUID_OUNCE_L / THOUSAND_FT2_M2) * HECTARE_M2).toBeCloseTo(3.1832682, 7); // GNU Units 2.22: 1 fl oz/1,000 ft² in L/ha
    expect((GALLON_L / THOUSAND_FT2_M2) * HECTARE_M2).toBeCloseTo(407.45833, 5); // GNU Units 2.22: 1 gal/1,000 ft² in L/ha
    expect((SQUARE_FOOT_M2 * INCH_M * 1000) / GALLON_L).toBeCloseTo(0.6233766, 7); // computed: 1 in water, gal/ft²
    expect((1000 * SQUARE_FOOT_M2 * INCH_M * 1000) / GALLON_L).toBeCloseTo(623.3766, 4); // turf worksheet: 1 in water, gal/1,000 ft²
    expect(Math.round((ACRE_M2 * INCH_M * 1000) / GALLON_L)).toBe(27_154); // turf mathematics worksheet: 1 in over 1 ac, gal
    expect((ACRE_M2 * INCH_M * 1000) / GALLON_L).toBeCloseTo(27_154.29, 2); // computed: the same, gal
    expect((ACRE_M2 * INCH_M) / FOOT_M ** 3).toBeCloseTo(3630, 8); // turf mathematics worksheet: the same, ft³
  });
});
