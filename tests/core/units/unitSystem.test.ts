import { expect, test } from 'vitest';
import { otherUnits } from '../../../core/units/unitSystem.ts';

test('each system has the other', () => {
  expect([otherUnits('us'), otherUnits('metric')]).toEqual(['metric', 'us']); // there are two
});
