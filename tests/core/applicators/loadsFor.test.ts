import { expect, test } from 'vitest';
import { LOAD_SLACK, loadsFor } from '../../../core/applicators/index.ts';

test('ground takes whole loads, at least one, and rounding asks for none', () => {
  expect(loadsFor(0.5, 100)).toBe(1); // less than one
  expect(loadsFor(300, 100)).toBe(3); // 3 x 100
  expect(loadsFor(301, 100)).toBe(4); // 1 m² over
  expect(loadsFor(300 * (1 + LOAD_SLACK / 10), 100)).toBe(3); // over by rounding
});
