import { expect, test } from 'vitest';
import { FOOT_M } from '../../../core/units/index.ts';
import {
  pointSigmaText,
  readPointSigma,
  readScaleSigma,
  scaleSigmaText,
} from '../../../renderer/shared/readSigma.ts';

const kindOf = (read: ReturnType<typeof readScaleSigma>) => (read.ok ? read.value : read.problems[0].kind);

test('nothing typed is not stated, and nought is refused, for it is never true', () => {
  expect(readPointSigma(' ', 'us')).toEqual({ ok: true, value: null }); // not stated
  expect(kindOf(readPointSigma('0', 'us'))).toBe('value/not-positive'); // a σ of 0 is never true
  expect(readScaleSigma('')).toEqual({ ok: true, value: null }); // not stated
  expect(kindOf(readScaleSigma('0 %'))).toBe('value/not-positive'); // a σ of 0 is never true
});

test('a corner is read in the person’s unit or the one typed, a scale in percent', () => {
  expect(kindOf(readPointSigma('0.5', 'us'))).toBeCloseTo(0.5 * FOOT_M, 12); // half a foot
  expect(kindOf(readPointSigma('5 cm', 'us'))).toBeCloseTo(0.05, 12); // 5 / 100
  expect(kindOf(readScaleSigma('0.5 %'))).toBeCloseTo(0.005, 12); // 0.5 / 100
  expect(kindOf(readScaleSigma('60'))).toBe('value/out-of-range'); // over half the scale
  expect(kindOf(readScaleSigma('about one'))).toBe('value/not-a-number'); // words
});

test('small figures keep their digits', () => {
  expect(pointSigmaText(0.01 * FOOT_M, 'us')).toBe('0.01 ft'); // a hundredth of a foot
  expect(scaleSigmaText(1 / 300)).toBe('0.33%'); // 100 / 300
});
