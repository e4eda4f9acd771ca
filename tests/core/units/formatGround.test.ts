import { describe, expect, test } from 'vitest';
import {
  areaFigure,
  FOOT_M,
  formatAngle,
  formatArea,
  formatAreaBoth,
  formatAreaSigma,
  formatEnough,
  fineLengthFigure,
  formatLength,
  formatPercent,
  formatTape,
  INCH_M,
  lengthFigure,
  SQUARE_FOOT_M2,
} from '../../../core/units/index.ts';

describe('an area', () => {
  const areaM2 = 6800 * SQUARE_FOOT_M2;

  test('is whole square feet or tenths of a square metre', () => {
    expect(formatArea(areaM2, 'us')).toBe('6,800 ft²'); // the input
    expect(formatArea(areaM2, 'metric')).toBe('631.7 m²'); // 6.8 × 92.90304 = 631.740672
    expect(formatAreaBoth(areaM2, 'us')).toBe('6,800 ft² (631.7 m²)'); // both of the above
    expect(formatAreaBoth(areaM2, 'metric')).toBe('631.7 m² (6,800 ft²)'); // both of the above
    expect(areaFigure(areaM2, 'us')).toEqual({ text: '6,800', unit: 'ft²' }); // the input
  });

  test('has its uncertainty at the same last digit, never as nought', () => {
    expect(formatAreaSigma(55.9 * SQUARE_FOOT_M2, 'us')).toBe('± 56 ft²'); // 55.9 rounded
    expect(formatAreaSigma(0.01, 'metric')).toBe('± 0.1 m²'); // raised to the last digit shown
    expect(formatAreaSigma(0, 'metric')).toBe('± 0.0 m²'); // no uncertainty at all
  });
});

describe('a length', () => {
  test('that has to be enough is rounded up, and a whole number of steps stays what it is', () => {
    expect(formatEnough(61.2 * FOOT_M, 'us')).toBe('62 ft'); // the next whole foot
    expect(formatEnough(50 * FOOT_M, 'us')).toBe('50 ft'); // the input
    expect(formatEnough(18.61, 'metric')).toBe('18.7 m'); // the next tenth
    expect(formatEnough(0.3, 'metric')).toBe('0.3 m'); // the input
    expect(formatEnough(0, 'metric')).toBe('0.0 m'); // nothing needed
  });

  test('is decimal feet or metres', () => {
    expect(formatLength(43.3 * FOOT_M, 'us')).toBe('43.3 ft'); // the input
    expect(formatLength(3.81, 'metric')).toBe('3.81 m'); // the input
    expect(lengthFigure(3.81, 'us')).toEqual({ text: '12.5', unit: 'ft' }); // 3.81 / 0.3048 = 12.5
  });

  test('held against another shows hundredths', () => {
    expect(fineLengthFigure(43.318 * FOOT_M, 'us')).toEqual({ text: '43.32', unit: 'ft' }); // the input, to a hundredth
    expect(fineLengthFigure(-0.284, 'metric')).toEqual({ text: '-0.28', unit: 'm' }); // the input, to a hundredth
  });

  test('on a tape is feet and whole inches, with a full foot carried over', () => {
    expect(formatTape(12.5 * FOOT_M, 'us')).toBe('12 ft 6 in'); // 12.5 ft
    expect(formatTape(12 * FOOT_M - 0.4 * INCH_M, 'us')).toBe('12 ft 0 in'); // 143.6 in rounds to 144
    expect(formatTape(-6 * INCH_M, 'us')).toBe('-0 ft 6 in'); // half a foot the other way
    expect(formatTape(3.81, 'metric')).toBe('3.81 m'); // the input
  });
});

test('an angle and a share are short', () => {
  expect(formatAngle(45)).toBe('45°'); // the input
  expect(formatAngle(112.5)).toBe('112.5°'); // the input
  expect(formatPercent(0.9963)).toBe('99.6%'); // 99.63 to a tenth
});
