import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactJson } from '../../../core/yardFile/index.ts';

test('any plain data comes back exactly, minus zero included', () => {
  const plain = fc.jsonValue({ maxDepth: 4 });
  fc.assert(
    fc.property(plain, fc.double({ noNaN: true, noDefaultInfinity: true }), (value, number) => {
      const data = { value, number };
      expect(JSON.parse(exactJson(data) ?? '')).toStrictEqual(data);
    }),
    { seed: 20261125 },
  );
  expect(Object.is(JSON.parse(exactJson([-0]) ?? '')[0], -0)).toBe(true);
});

test('what JSON cannot say is refused and not bent', () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY, undefined, 1n, () => 1, Symbol('x')]) {
    expect(exactJson(value)).toBeNull();
    expect(exactJson({ deep: [value] })).toBeNull();
  }
});

test('it is ordinary JSON', () => {
  const value = { text: 'a "quoted"\n\u2028 ü', list: [1, 0.1, 1e21, 5e-324, true, null, {}], '': [] };
  expect(exactJson(value)).toBe(JSON.stringify(value)); // origin: the engine's own JSON writer
});
