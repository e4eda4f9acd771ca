import { expect, test } from 'vitest';
import { dividesOf } from '../../../core/sections/divides.ts';
import { loadCount } from '../../../core/sections/share.ts';
import { rect, region } from '../../support/builders.ts';

const ground = region(rect(0, 0, 10, 6));

test('four equal loads divide in three ways', () => {
  const divides = dividesOf({ region: ground, loads: 4, rests: [] });
  expect(divides.map(({ belowM2 }) => belowM2)).toEqual([15, 30, 45]); // quarters of 60 m²
  for (const { below, above } of divides) expect(loadCount(below) + loadCount(above)).toBe(4); // nothing lost
});

test('a smaller rest goes to either side whole', () => {
  const tail = { end: 'tail' as const, areaM2: 10, mostM2: 25 };
  const divides = dividesOf({ region: ground, loads: 2, rests: [tail] });
  expect(divides.map(({ belowM2 }) => belowM2)).toEqual([10, 25, 35, 50]); // sums of 25, 25 and 10
});
