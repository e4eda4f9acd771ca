import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sameData } from '../../../core/yardFile/index.ts';

test('data is the same as a copy of itself, with keys in another order', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(sameData(value, structuredClone(value))).toBe(true);
    }),
    { seed: 20261125 },
  );
  expect(sameData({ a: 1, b: [2] }, { b: [2], a: 1 })).toBe(true);
});

test.each([
  [1, 2],
  [1, '1'],
  [null, {}],
  [[], {}],
  [[1, 2], [1]],
  [
    [1, 2],
    [2, 1],
  ],
  [{ a: 1 }, { a: 1, b: 2 }],
  [{ a: 1, b: 2 }, { a: 1 }],
  [{ a: 1 }, { b: 1 }],
  [{ a: undefined }, { b: undefined }],
  [{ a: { b: [0] } }, { a: { b: [1e-300] } }],
])('%j and %j are not the same', (a, b) => {
  expect(sameData(a, b)).toBe(false);
});

test('zero is zero, whatever its sign', () => {
  expect(sameData({ x: [0] }, { x: [-0] })).toBe(true);
});
