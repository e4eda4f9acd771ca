import { expect, test } from 'vitest';
import { formatDay } from '../../../core/units/index.ts';

test('an ISO date is written out, a date-time by its day, and anything else as it is', () => {
  expect(formatDay('2026-05-12')).toBe('12 May 2026');
  expect(formatDay('2026-11-05T10:00:00Z')).toBe('5 Nov 2026');
  expect(formatDay('last spring')).toBe('last spring');
  expect(formatDay('2026-13-01')).toBe('2026-13-01'); // there is no thirteenth month
});
