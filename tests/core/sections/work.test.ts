import { expect, test } from 'vitest';
import { isSpent, spend, withPart } from '../../../core/sections/work.ts';

test('a step gets its part and no more, and what it spends is gone from the whole', () => {
  const work = { left: 100 };
  const wasSpent = withPart(work, 0.25, (own) => {
    spend(own, 20);
    const before = isSpent(own);
    spend(own, 10);
    return [before, isSpent(own)];
  });
  expect(wasSpent).toEqual([false, true]); // a quarter of 100 is more than 20 and less than 30
  expect(work.left).toBe(70); // 100 - 20 - 10
});

test('nothing is left to give a part of once all is spent', () => {
  const work = { left: -1 };
  expect(withPart(work, 0.5, (own) => own.left)).toBe(0);
});
