import { expect, test } from 'vitest';
import { lineLengthM } from '../../../core/passes/lineLength.ts';
import { points } from '../../support/builders.ts';

test('the length of a line is the sum of its steps', () => {
  expect(lineLengthM(points([0, 0], [3, 4], [3, 10]))).toBe(11); // 3-4-5 triangle and 6
  expect(lineLengthM([])).toBe(0); // no step
});
