import fc from 'fast-check';
import { expect, test } from 'vitest';
import { freshSortKey, SORT_STRIDE, sortKeyBetween } from '../../../core/yardFile/index.ts';

test('a new key lies between its neighbours, or there is said to be no room', () => {
  const key = fc.maxSafeInteger();
  fc.assert(
    fc.property(key, key, (a, b) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      const between = sortKeyBetween(low, high);
      if (between === null) expect(high - low).toBeLessThan(2);
      else expect(between > low && between < high && Number.isSafeInteger(between)).toBe(true);
    }),
    { seed: 20261125 },
  );
});

test('a first and a last key have room on both sides', () => {
  expect(sortKeyBetween(null, null)).toBe(SORT_STRIDE);
  expect(sortKeyBetween(null, 5)).toBe(5 - SORT_STRIDE);
  expect(sortKeyBetween(5, null)).toBe(5 + SORT_STRIDE);
});

test('sixteen rows fit into one gap before it must be numbered afresh', () => {
  let low = freshSortKey(0);
  const high = freshSortKey(1);
  let fitted = 0;
  for (let key = sortKeyBetween(low, high); key !== null; key = sortKeyBetween(low, high)) {
    low = key;
    fitted += 1;
  }
  expect(fitted).toBe(Math.log2(SORT_STRIDE)); // each new row halves the gap of 2^16 above it
});

test('keys of a hostile file leave no room rather than a wrong order', () => {
  expect(sortKeyBetween(2 ** 60, null)).toBeNull();
  expect(sortKeyBetween(Number.NaN, 5)).toBeNull();
  expect(sortKeyBetween(7, 7)).toBeNull();
});
