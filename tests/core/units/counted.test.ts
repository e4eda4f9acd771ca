import { expect, test } from 'vitest';
import { counted } from '../../../core/units/index.ts';

test('one is counted in the singular, any other number in the plural', () => {
  expect(counted(1, 'corner')).toBe('1 corner');
  expect(counted(0, 'corner')).toBe('0 corners');
  expect(counted(1200, 'corner')).toBe('1,200 corners'); // thousands apart, as everywhere
});
