import { expect, test } from 'vitest';
import { litres, totalL } from '../../../core/units/index.ts';

test('volumes add up, and none at all add up to nothing', () => {
  expect(totalL([litres(1.5), litres(2.25)])).toBe(3.75); // 1.5 + 2.25
  expect(totalL([])).toBe(0); // empty sum
});
