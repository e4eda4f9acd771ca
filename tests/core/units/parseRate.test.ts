import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Result } from '../../../core/result.ts';
import {
  FLUID_OUNCE_L,
  formatCarrier,
  formatRate,
  GALLON_L,
  parseCarrier,
  parseRate,
  rateFigure,
  THOUSAND_FT2_M2,
  USUAL_UNITS,
} from '../../../core/units/index.ts';

const value = (read: Result<number>): number => {
  if (!read.ok) throw new Error(`refused: ${read.problems[0].kind}`);
  return read.value;
};
const refusal = (read: Result<number>): string => (read.ok ? `read as ${read.value}` : read.problems[0].kind);
const THREE_FL_OZ = (3 * FLUID_OUNCE_L) / THOUSAND_FT2_M2;

test.each([
  ['3 fl oz/1000ft2', THREE_FL_OZ],
  ['3 fl oz per 1,000 ft²', THREE_FL_OZ],
  ['3 fl. oz. / 1,000 sq. ft.', THREE_FL_OZ],
  ['3', THREE_FL_OZ],
  ['1 1/2 fl oz/500 ft²', THREE_FL_OZ],
  ['100 mL per 100 m2', 0.001], // 0.1 L over 100 m²
  ['10 L/ha', 0.001], // 10 L over 10,000 m²
  ['3.1832682 L/ha', THREE_FL_OZ / 3], // GNU Units 2.22: 1 fl oz/1,000 ft² = 3.1832682 L/ha
])('the rate %s is read in its own units', (typed, expectedLPerM2) => {
  expect(value(parseRate(typed, 'Rate', 'fl oz per 1,000 ft²'))).toBeCloseTo(expectedLPerM2, 10);
});

test.each([
  ['1.25 gal/1,000 ft²', (1.25 * GALLON_L) / THOUSAND_FT2_M2],
  ['407.45833 L/ha', GALLON_L / THOUSAND_FT2_M2], // GNU Units 2.22: 1 gal/1,000 ft² = 407.45833 L/ha
  ['65.34 gal/ac', (1.5 * GALLON_L) / THOUSAND_FT2_M2], // extension message (nafex, Mar 2009): 1.5 gal/1,000 ft² = 65.34 GPA
])('the carrier volume %s is read in its own units', (typed, expectedLPerM2) => {
  expect(value(parseCarrier(typed, 'Carrier', 'gal per 1,000 ft²'))).toBeCloseTo(expectedLPerM2, 9);
});

describe('a rate that cannot be meant', () => {
  test.each([
    ['', 'value/missing'],
    ['3 fl oz', 'value/unknown-unit'],
    ['3 lb/1000 ft2', 'value/unknown-unit'],
    ['3 fl oz/1000 ft', 'value/unknown-unit'],
    ['3 fl oz/1000', 'value/missing-unit'],
    ['3 fl oz/0 ft2', 'value/not-a-number'],
    ['3 fl oz/-5 ft2', 'value/not-a-number'],
    ['0 fl oz/1000 ft2', 'value/not-positive'],
    ['fl oz/1000 ft2', 'value/not-a-number'],
  ])('%j is refused with %s', (typed, kind) => {
    expect(refusal(parseRate(typed, 'Rate', 'fl oz per 1,000 ft²'))).toBe(kind);
  });

  test('a bare number needs a unit where the field gives none', () => {
    expect(refusal(parseRate('3', 'Rate', null))).toBe('value/missing-unit');
  });
});

test('a printed rate or carrier volume can be typed back, and prints the same again', () => {
  const systems = fc.constantFrom('us' as const, 'metric' as const);
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 10, noNaN: true }), systems, (rateLPerM2, units) => {
      const line = formatRate(rateLPerM2, units);
      expect(formatRate(value(parseRate(line, 'Rate', null)), units)).toBe(line);
      const carrier = formatCarrier(rateLPerM2, units);
      expect(formatCarrier(value(parseCarrier(carrier, 'Carrier', null)), units)).toBe(carrier);
      const figure = rateFigure(rateLPerM2, units);
      expect(figure.unit).toBe(USUAL_UNITS[units].rate);
      expect(value(parseRate(figure.text, 'Rate', figure.unit)) / rateLPerM2).toBeCloseTo(1, 3); // four digits kept
    }),
  );
});

test('no text whatever is an error that is thrown', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[-+0-9., floztgaperm²/]{0,24}$/), (typed) => {
      const read = parseRate(typed, 'Rate', 'mL per 100 m²');
      expect(read.ok ? Number.isFinite(read.value) && read.value > 0 : read.problems.length > 0).toBe(true);
    }),
    { numRuns: 2000 },
  );
});
