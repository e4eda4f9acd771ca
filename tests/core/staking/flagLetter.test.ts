import { expect, test } from 'vitest';
import { flagLetter } from '../../../core/staking/flagLetter.ts';

test('flags are lettered as the columns of a sheet are, and no two alike', () => {
  expect([0, 1, 25, 26, 27, 52].map(flagLetter)).toEqual(['a', 'b', 'z', 'aa', 'ab', 'ba']); // counted by hand
  expect(new Set(Array.from({ length: 1000 }, (_, i) => flagLetter(i))).size).toBe(1000);
});
