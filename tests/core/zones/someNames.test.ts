import { expect, test } from 'vitest';
import { someNames } from '../../../core/zones/someNames.ts';

test('a few names are listed, many are counted, and none is left out of the count', () => {
  expect(someNames(['a', 'b', 'c', 'd'])).toBe('a, b, c, d');
  expect(someNames(['a', 'b', 'c', 'd', 'e'])).toBe('a, b, c and 2 more'); // 5 less the 3 listed
  expect(someNames(Array.from({ length: 200 }, (_, i) => `bed ${i}`))).toBe(
    'bed 0, bed 1, bed 2 and 197 more',
  ); // 200 - 3
});
