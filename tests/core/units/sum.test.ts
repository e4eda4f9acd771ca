import { expect, test } from 'vitest';
import { sum } from '../../../core/units/index.ts';

test('figures add up, and none at all add up to nothing', () => {
  expect(sum([1.5, 2.25])).toBe(3.75); // 1.5 + 2.25
  expect(sum([])).toBe(0); // empty sum
});
