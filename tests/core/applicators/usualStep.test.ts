import { expect, test } from 'vitest';
import { USUAL_STEP_M } from '../../../core/applicators/index.ts';

test('a usual step lies between a short and a long one', () => {
  expect(USUAL_STEP_M).toBeGreaterThan(0.5); // a shuffle
  expect(USUAL_STEP_M).toBeLessThan(0.9); // a march
});
