import { expect, test } from 'vitest';
import { zoneLetter } from '../../../core/plan/zoneLetter.ts';

test('zones are lettered as the columns of a sheet', () => {
  expect([0, 1, 25, 26, 27, 51, 52, 701, 702].map(zoneLetter)).toEqual([
    'A',
    'B',
    'Z',
    'AA',
    'AB',
    'AZ',
    'BA',
    'ZZ',
    'AAA', // bijective base 26, by hand
  ]);
});
