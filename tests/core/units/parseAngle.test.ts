import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Result } from '../../../core/result.ts';
import { formatAngle, parseAngle } from '../../../core/units/index.ts';

const value = (read: Result<number>): number => {
  if (!read.ok) throw new Error(`refused: ${read.problems[0].kind}`);
  return read.value;
};
const refusal = (read: Result<number>): string => (read.ok ? `read as ${read.value}` : read.problems[0].kind);

describe('a typed bearing', () => {
  test.each([
    ['90', 90],
    ['45°', 45],
    ['45.5 deg', 45.5],
    [`45° 30'`, 45.5],
    ['45°30′36″', 45.51], // 30/60 + 36/3600 = 0.51
    ['-10', 350],
    ['360', 0],
    ['0', 0],
    ['N45E', 45],
    ['n 45° e', 45],
    ['S45E', 135], // a quadrant bearing counts from north or south: 180 − 45
    ['S 30° W', 210], // 180 + 30
    [`N 10° 30' W`, 349.5], // 360 − 10.5
    ['N', 0],
    ['NE', 45],
    ['wsw', 247.5], // 11 × 22.5
    ['S0E', 180],
  ])('%s is degrees from north, clockwise', (typed, expectedDeg) => {
    expect(value(parseAngle(typed, 'Heading'))).toBeCloseTo(expectedDeg, 10);
  });

  test.each([
    ['', 'value/missing'],
    ['east-ish', 'value/not-a-number'],
    ['400', 'value/out-of-range'],
    ['-361', 'value/out-of-range'],
    ['N95E', 'value/out-of-range'],
    ['N-5E', 'value/out-of-range'],
    ['N45N', 'value/not-a-number'],
    ['45 rad', 'value/unknown-unit'],
  ])('%j is refused with %s', (typed, kind) => {
    expect(refusal(parseAngle(typed, 'Heading'))).toBe(kind);
  });

  test('is never 360 and never minus nought', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (angleDeg) => {
        const read = value(parseAngle(angleDeg.toFixed(6), 'Heading'));
        expect(read >= 0 && read < 360 && !Object.is(read, -0)).toBe(true);
      }),
    );
  });

  test('prints and reads back the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3599 }), (tenths) => {
        const line = formatAngle(tenths / 10);
        expect(formatAngle(value(parseAngle(line, 'Heading')))).toBe(line);
      }),
    );
  });
});
