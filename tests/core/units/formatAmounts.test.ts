import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  FLUID_OUNCE_L,
  FOOT_M,
  formatCarrier,
  formatDial,
  formatRate,
  formatSpeed,
  formatTime,
  formatVolume,
  GALLON_L,
  parseVolume,
  rateFigure,
  THOUSAND_FT2_M2,
  volumeSigmaFigure,
  volumeStepL,
  volumeUnitFor,
} from '../../../core/units/index.ts';

describe('a volume', () => {
  test('is printed in what a person measures it with', () => {
    expect(formatVolume(20.4 * FLUID_OUNCE_L, 'us')).toBe('20.4 fl oz'); // the input
    expect(formatVolume(8.5 * GALLON_L, 'us')).toBe('8.50 gal'); // the input
    expect(formatVolume(0.0304, 'metric')).toBe('30.4 mL'); // the input
    expect(formatVolume(32.175, 'metric')).toBe('32.17 L'); // 32.175 is 32.17499… as a double
  });

  test('carries its ± at its own place, never as nought', () => {
    expect(volumeSigmaFigure(0.84 * FLUID_OUNCE_L, 'us', 'fl oz').text).toBe('± 0.8'); // one decimal of fl oz
    expect(volumeSigmaFigure(1e-6, 'us', 'gal').text).toBe('± 0.01'); // raised to the last digit shown
    expect(volumeSigmaFigure(0, 'metric', 'L').text).toBe('± 0.00'); // no uncertainty at all
  });

  test('changes unit at one gallon and at one litre', () => {
    expect(formatVolume(127.9 * FLUID_OUNCE_L, 'us')).toBe('127.9 fl oz'); // the input, below 128 fl oz
    expect(formatVolume(GALLON_L, 'us')).toBe('1.00 gal'); // 128 fl oz = 1 gal
    expect(formatVolume(0.999, 'metric')).toBe('999.0 mL'); // the input
    expect(formatVolume(1, 'metric')).toBe('1.00 L'); // the input
  });

  test('of less than a fluid ounce is in teaspoons, so that a small dose does not round away', () => {
    expect(formatVolume(0.32 * FLUID_OUNCE_L, 'us')).toBe('1.92 tsp'); // pested.unl.edu/math: 6 tsp = 1 fl oz
    expect(formatVolume(FLUID_OUNCE_L, 'us')).toBe('1.0 fl oz'); // the input
  });

  test('is never printed more than 5 % off, from a millilitre up', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1000, noNaN: true }), (volumeL) => {
        for (const units of ['us', 'metric'] as const) {
          const shown = parseVolume(formatVolume(volumeL, units), 'Volume', null);
          expect(shown.ok && Math.abs(shown.value / volumeL - 1)).toBeLessThanOrEqual(0.05001); // UMass: ±5 %
        }
      }),
    );
  });

  test('keeps one unit through a column when that is given', () => {
    const unit = volumeUnitFor(5 * GALLON_L, 'us');
    expect(formatVolume(0.5 * GALLON_L, 'us', unit)).toBe('0.50 gal'); // the input
  });

  test('has steps of its last digit', () => {
    expect(volumeStepL('fl oz')).toBeCloseTo(FLUID_OUNCE_L / 10, 15); // one decimal
    expect(volumeStepL('gal')).toBeCloseTo(GALLON_L / 100, 15); // two decimals
    expect(volumeStepL('mL')).toBe(0.0001); // one decimal
    expect(volumeStepL('L')).toBe(0.01); // two decimals
  });
});

describe('a rate', () => {
  test('is printed as labels print it', () => {
    const threeFlOz = (3 * FLUID_OUNCE_L) / THOUSAND_FT2_M2;
    expect(formatRate(threeFlOz, 'us')).toBe('3 fl oz per 1,000 ft²'); // the input
    expect(formatRate(threeFlOz, 'metric')).toBe('95.5 mL per 100 m²'); // 3 × 31.832682 mL/100 m² (GNU Units 2.22)
    expect(formatCarrier((1.25 * GALLON_L) / THOUSAND_FT2_M2, 'us')).toBe('1.25 gal per 1,000 ft²'); // the input
    expect(formatCarrier(GALLON_L / THOUSAND_FT2_M2, 'metric')).toBe('4.075 L per 100 m²'); // 4.0745833 (GNU Units 2.22)
  });

  test('comes apart into figure and unit', () => {
    expect(rateFigure(0.001, 'metric')).toEqual({ text: '100', unit: 'mL per 100 m²' }); // 0.001 L/m² × 100 m²
  });
});

test('a dial is marked in fluid ounces per gallon or millilitres per litre', () => {
  expect(formatDial((0.6 * FLUID_OUNCE_L) / GALLON_L, 'us')).toBe('0.6 fl oz/gal'); // the input
  expect(formatDial((0.6 * FLUID_OUNCE_L) / GALLON_L, 'metric')).toBe('4.69 mL/L'); // 0.6 / 128 = 0.0046875
});

describe('pace and time', () => {
  test('a pace is in feet or metres a second', () => {
    expect(formatSpeed(2.5 * FOOT_M, 'us')).toBe('2.5 ft/s'); // the input
    expect(formatSpeed(2.5 * FOOT_M, 'metric')).toBe('0.762 m/s'); // 2.5 × 0.3048
  });

  test('a time is minutes and seconds, with hours only where there are any', () => {
    expect(formatTime(0)).toBe('0:00'); // 0 s
    expect(formatTime(245.4)).toBe('4:05'); // 245 s = 4 × 60 + 5
    expect(formatTime(59.6)).toBe('1:00'); // rounds to 60 s
    expect(formatTime(3599.5)).toBe('1:00:00'); // rounds to 3,600 s
    expect(formatTime(3725)).toBe('1:02:05'); // 3,600 + 2 × 60 + 5
  });
});
