import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apportionForDisplay, FLUID_OUNCE_L, formatVolume, volumeStepL } from '../../../core/units/index.ts';

const STEP_L = volumeStepL('fl oz');
const jobs = fc.array(fc.double({ min: 0, max: 20, noNaN: true }), { maxLength: 40 });
const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
/** The printed text as a whole number of last digits: "1,020.4 fl oz" is 10204. */
const tenths = (text: string): number => Number(text.replace(/[^\d]/g, ''));
const printed = (volumeL: number): number => tenths(formatVolume(volumeL, 'us', 'fl oz'));

describe('amounts apportioned for print', () => {
  test('add up to the printed total to the last digit, in 10,000 random jobs', () => {
    fc.assert(
      fc.property(jobs, (valuesL) => {
        const shown = apportionForDisplay(valuesL, STEP_L, sumOf(valuesL));
        expect(sumOf(shown.map(printed))).toBe(Math.round(sumOf(valuesL) / STEP_L));
      }),
      { numRuns: 10_000, seed: 20261125 },
    );
  });

  test('stay within one last digit of their true value, and none turns negative', () => {
    fc.assert(
      fc.property(jobs, (valuesL) => {
        const shown = apportionForDisplay(valuesL, STEP_L, sumOf(valuesL));
        shown.forEach((shownL, i) => {
          expect(Math.abs(shownL - (valuesL[i] as number))).toBeLessThan(STEP_L * (1 + 1e-6));
          expect(shownL).toBeGreaterThanOrEqual(0);
        });
      }),
    );
  });

  test('add up at both levels when loads are apportioned to zones that were apportioned to the job', () => {
    fc.assert(
      fc.property(fc.array(jobs, { minLength: 1, maxLength: 8 }), (zones) => {
        const zoneTotals = zones.map(sumOf);
        const jobL = sumOf(zoneTotals);
        const shownZones = apportionForDisplay(zoneTotals, STEP_L, jobL);
        const shownLoads = zones.map((loads, i) =>
          apportionForDisplay(loads, STEP_L, shownZones[i] as number),
        );
        shownLoads.forEach((loads, i) => {
          expect(sumOf(loads.map(printed))).toBe(printed(shownZones[i] as number));
        });
        expect(sumOf(shownLoads.flat().map(printed))).toBe(Math.round(jobL / STEP_L));
      }),
    );
  });

  test('leave values alone that can be printed exactly', () => {
    const loadsL = [9.6, 9.6, 1.2].map((flOz) => flOz * FLUID_OUNCE_L);
    const shown = apportionForDisplay(loadsL, STEP_L, sumOf(loadsL));
    expect(shown.map((shownL) => formatVolume(shownL, 'us'))).toEqual([
      '9.6 fl oz',
      '9.6 fl oz',
      '1.2 fl oz',
    ]); // the inputs
  });

  test('give the missing digit to the largest remainder, the first among equals', () => {
    expect(apportionForDisplay([1 / 3, 1 / 3, 1 / 3], 1, 1)).toEqual([1, 0, 0]); // by hand: total 1, equal remainders
    expect(apportionForDisplay([1.2, 1.7, 1.1], 1, 4)).toEqual([1, 2, 1]); // by hand: floors 3, total 4, .7 largest
  });

  test('of a total that is not theirs are a defect', () => {
    expect(() => apportionForDisplay([1, 2], 0.1, 9)).toThrow('do not make up');
    expect(() => apportionForDisplay([1, 2], 0, 3)).toThrow('do not make up');
    expect(() => apportionForDisplay([Number.NaN], 0.1, 1)).toThrow('do not make up');
  });
});
