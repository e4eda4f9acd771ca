import { describe, expect, test } from 'vitest';
import { formatNumber, formatSignificant } from '../../../core/units/index.ts';

describe('a printed number', () => {
  test('has a comma between thousands and a point before decimals', () => {
    expect(formatNumber(999, 0)).toBe('999'); // no thousands
    expect(formatNumber(1234567.891, 2)).toBe('1,234,567.89'); // the input, cut
    expect(formatNumber(0.12345, 4)).toBe('0.1235'); // fifth digit rounds up
    expect(formatNumber(-1234.5, 1)).toBe('-1,234.5'); // the input
  });

  test('is never minus nought', () => {
    expect(formatNumber(-0.04, 1)).toBe('0.0'); // rounds to nought
    expect(formatNumber(-0, 0)).toBe('0'); // negative zero
  });

  test('is never NaN or infinite: that is a defect', () => {
    expect(() => formatNumber(Number.NaN, 1)).toThrow('not a printable number');
    expect(() => formatNumber(Number.POSITIVE_INFINITY, 1)).toThrow('not a printable number');
    expect(() => formatSignificant(Number.NaN, 3)).toThrow('not a printable number');
  });
});

test('significant digits drop trailing zeros but never a whole digit', () => {
  expect(formatSignificant(3, 4)).toBe('3'); // the input
  expect(formatSignificant(0.095539, 3)).toBe('0.0955'); // three digits
  expect(formatSignificant(12345.6, 3)).toBe('12,346'); // whole digits kept
  expect(formatSignificant(9.9996, 4)).toBe('10'); // carries over
  expect(formatSignificant(100, 3)).toBe('100'); // no decimals to drop
  expect(formatSignificant(0, 3)).toBe('0'); // nought
});
