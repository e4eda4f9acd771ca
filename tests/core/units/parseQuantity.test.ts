import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Result } from '../../../core/result.ts';
import {
  ACRE_M2,
  areaFigure,
  CUP_L,
  FLUID_OUNCE_L,
  FOOT_M,
  formatArea,
  formatLength,
  formatSpeed,
  formatTape,
  formatVolume,
  GALLON_L,
  INCH_M,
  lengthFigure,
  parseArea,
  parseLength,
  parseOffset,
  parseSpeed,
  parseVolume,
  SQUARE_FOOT_M2,
} from '../../../core/units/index.ts';

const value = (read: Result<number>): number => {
  if (!read.ok) throw new Error(`refused: ${read.problems[0].kind}`);
  return read.value;
};
const refusal = (read: Result<number>): string => (read.ok ? `read as ${read.value}` : read.problems[0].kind);
const length = (typed: string) => value(parseLength(typed, 'Length', 'ft'));

describe('a typed length', () => {
  test.each([
    ['43.3', 43.3 * FOOT_M],
    ['40ft', 40 * FOOT_M],
    [`12'6"`, 12.5 * FOOT_M],
    ['12′6″', 12.5 * FOOT_M],
    [`12' 6`, 12.5 * FOOT_M],
    ['12 ft 6 in', 12.5 * FOOT_M],
    ['12ft2in', 12 * FOOT_M + 2 * INCH_M],
    ['12 ft 6 1/2 in.', 12 * FOOT_M + 6.5 * INCH_M],
    ['6½"', 6.5 * INCH_M],
    ['1/2 in', INCH_M / 2],
    ['3.81 m', 3.81],
    ['3.81 M', 3.81],
    ['150 cm', 1.5],
    ['1 m 50 cm', 1.5],
    ['10 yd', 30 * FOOT_M],
    ['1,200 ft', 1200 * FOOT_M],
    ['.5 m', 0.5],
  ])('%s is read in its own units', (typed, expectedM) => {
    expect(length(typed)).toBeCloseTo(expectedM, 12); // the input, by the constants checked in constants.test.ts
  });

  test('without a unit is in the unit of the field', () => {
    expect(value(parseLength('3.81', 'Length', 'm'))).toBe(3.81); // the input
    expect(value(parseLength('5', 'Length', 'in'))).toBeCloseTo(0.127, 15); // 5 × 0.0254
  });

  test.each([
    ['', 'value/missing'],
    ['   ', 'value/missing'],
    ['twelve', 'value/not-a-number'],
    ['12,5 m', 'value/not-a-number'],
    ['1,2345 m', 'value/not-a-number'],
    ['12 ft -6 in', 'value/not-a-number'],
    ['12 ft 14 in', 'value/not-a-number'],
    ['6 in 12 ft', 'value/not-a-number'],
    ['12 ft 6 in high (about)', 'value/not-a-number'],
    ['1/0 m', 'value/not-a-number'],
    ['1e3 m', 'value/unknown-unit'],
    ['9'.repeat(400), 'value/not-a-number'],
    ['NaN', 'value/not-a-number'],
    ['12 kg', 'value/unknown-unit'],
    ['12 constructor', 'value/unknown-unit'],
    ['1 m 50', 'value/missing-unit'],
    ['0', 'value/not-positive'],
    ['-3 m', 'value/not-positive'],
  ])('%j is refused with %s', (typed, kind) => {
    expect(refusal(parseLength(typed, 'Length', 'ft'))).toBe(kind);
  });

  test('is refused by the name of its field, with what was typed and what would do', () => {
    const read = parseLength(' 12 ', 'Swath', null);
    expect(read).toEqual({
      ok: false,
      problems: [
        {
          kind: 'value/missing-unit',
          where: { field: 'Swath' }, // the field given
          facts: { typed: '12', expected: '43.3 ft, 12 ft 6 in or 3.81 m' }, // typed, trimmed; our examples
        },
      ],
    });
  });
});

test('an offset may go either way, or nowhere', () => {
  expect(value(parseOffset(`-12' 6"`, 'East', 'ft'))).toBeCloseTo(-3.81, 12); // −12.5 × 0.3048
  expect(value(parseOffset('3.81', 'East', 'm'))).toBe(3.81); // the input
  expect(value(parseOffset('0', 'East', 'm'))).toBe(0); // the input
  expect(refusal(parseOffset('east', 'East', 'm'))).toBe('value/not-a-number');
});

test.each([
  ['100m2', 100],
  ['100 m²', 100],
  ['100 m^2', 100],
  ['100 sq m', 100],
  ['1,000 ft²', 92.90304], // LSU AgCenter conversions (92.9), exact 1,000 × 0.3048²
  ['1000ft2', 92.90304], // the same
  ['1000 sq. ft.', 92.90304], // the same
  ['1/4 acre', ACRE_M2 / 4],
  ['2 ha', 20_000],
  ['1000', 92.90304], // the default is ft²
])('the area %s is read in its own units', (typed, expectedM2) => {
  expect(value(parseArea(typed, 'Area', 'ft²'))).toBeCloseTo(expectedM2, 9);
});

test.each([
  ['32 fl oz', 32 * FLUID_OUNCE_L],
  ['32 fl. oz.', 32 * FLUID_OUNCE_L],
  ['32floz', 32 * FLUID_OUNCE_L],
  ['4 gal', 4 * GALLON_L],
  ['1 gal 16 fl oz', GALLON_L + 16 * FLUID_OUNCE_L],
  ['500 mL', 0.5],
  ['2L', 2],
  ['1 1/2 cups', 1.5 * CUP_L],
  ['2 tbsp', FLUID_OUNCE_L], // pested.unl.edu/math: 2 Tbsp = 1 fl oz
  ['6 tsp', FLUID_OUNCE_L], // pested.unl.edu/math: 6 tsp = 1 fl oz
  ['4', 4 * GALLON_L],
])('the volume %s is read in its own units', (typed, expectedL) => {
  expect(value(parseVolume(typed, 'Capacity', 'gal'))).toBeCloseTo(expectedL, 12);
});

test('an ounce that may be a weight is no volume', () => {
  expect(refusal(parseVolume('32 oz', 'Capacity', 'gal'))).toBe('value/unknown-unit');
});

test.each([
  ['2.5 ft/s', 2.5 * FOOT_M],
  ['2.5 ft / sec', 2.5 * FOOT_M],
  ['0.8 m/s', 0.8],
  ['1 mph', (88 * FOOT_M) / 60], // Univ. of Nebraska pested.unl.edu/math: 1 mph = 88 ft/min
  ['3.6 km/h', 1],
  ['3.6 kilometres per hour', 1],
  ['2.5', 2.5 * FOOT_M],
])('the pace %s is read in its own units', (typed, expectedMPerS) => {
  expect(value(parseSpeed(typed, 'Pace', 'ft/s'))).toBeCloseTo(expectedMPerS, 12);
});

describe('what is printed can be typed back', () => {
  const systems = fc.constantFrom('us' as const, 'metric' as const);
  const sizes = fc.double({ min: 0.1, max: 5_000_000, noNaN: true });

  test('to within half of the last digit shown', () => {
    fc.assert(
      fc.property(sizes, systems, (size, units) => {
        const us = units === 'us';
        const readM = value(parseLength(formatLength(size, units), 'Length', null));
        expect(Math.abs(readM - size)).toBeLessThanOrEqual((us ? 0.05 * FOOT_M : 0.005) * (1 + 1e-6));
        const readM2 = value(parseArea(formatArea(size, units), 'Area', null));
        expect(Math.abs(readM2 - size)).toBeLessThanOrEqual((us ? 0.5 * SQUARE_FOOT_M2 : 0.05) * (1 + 1e-6));
        const tapeM = value(parseLength(formatTape(size, units), 'Length', null));
        expect(Math.abs(tapeM - size)).toBeLessThanOrEqual((us ? 0.5 * INCH_M : 0.005) * (1 + 1e-6));
        expect(value(parseSpeed(formatSpeed(size, units), 'Pace', null)) / size).toBeCloseTo(1, 2);
      }),
    );
  });

  test('and is printed the same again, as a line or as figure and unit', () => {
    fc.assert(
      fc.property(sizes, systems, (size, units) => {
        const line = formatVolume(size, units);
        expect(formatVolume(value(parseVolume(line, 'Volume', null)), units)).toBe(line);
        const long = lengthFigure(size, units);
        expect(lengthFigure(value(parseLength(long.text, 'Length', long.unit)), units)).toEqual(long);
        const area = areaFigure(size, units);
        expect(areaFigure(value(parseArea(area.text, 'Area', area.unit)), units)).toEqual(area);
      }),
    );
  });
});

test('no text whatever is an error that is thrown', () => {
  const texts = fc.oneof(fc.string(), fc.stringMatching(/^[-+0-9., '"a-z/²°½]{0,20}$/));
  fc.assert(
    fc.property(texts, (typed) => {
      for (const read of [
        parseLength(typed, 'Field', 'ft'),
        parseArea(typed, 'Field', 'm²'),
        parseVolume(typed, 'Field', null),
        parseSpeed(typed, 'Field', 'mph'),
      ]) {
        expect(read.ok ? Number.isFinite(read.value) && read.value > 0 : read.problems.length > 0).toBe(true);
      }
    }),
    { numRuns: 2000 },
  );
});
