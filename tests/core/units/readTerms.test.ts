import { expect, test } from 'vitest';
import { plainSpelling, readTerms } from '../../../core/units/readTerms.ts';

test('every way to write a foot mark, a minus or a square comes out in one spelling', () => {
  expect(plainSpelling('12’ 6”')).toBe(`12' 6"`); // curly quotes
  expect(plainSpelling("12' 6''")).toBe(`12' 6"`); // two single quotes are one double
  expect(plainSpelling('−3 Sq. Ft.')).toBe('-3 sq ft'); // true minus, capitals, full stops
  expect(plainSpelling('100\u00a0m^2')).toBe('100 m2'); // no-break space, caret
  expect(plainSpelling('6¾ in')).toBe('6 3/4 in'); // fraction sign
});

test('terms come left to right, each with what stands behind it', () => {
  expect(readTerms('12 ft 6 1/2 in')).toEqual([
    { value: 12, unit: 'ft' }, // as written
    { value: 6.5, unit: 'in' }, // 6 + 1/2
  ]);
  expect(readTerms('1,234.5')).toEqual([{ value: 1234.5, unit: '' }]); // comma between thousands
  expect(readTerms('1000 ft2')).toEqual([{ value: 1000, unit: 'ft2' }]); // the 2 belongs to the unit
});

test('a text with anything left over has no terms', () => {
  for (const text of ['12 ft!', 'ft 12', '1,23', '12 ft +6 in', '.']) expect(readTerms(text)).toBeUndefined();
});
