import { expect, test } from 'vitest';
import { TapeSides } from '../../../core/sections/TapeSides.ts';

const FENCE = { from: { xM: 0, yM: 0 }, to: { xM: 10, yM: 5 } };
const WALL = { from: { xM: 12, yM: 6 }, to: { xM: 2, yM: 1 } };
const sides = new TapeSides([FENCE, WALL]);
/** So far along the line both sides lie on, as a share of the fence. */
const at = (share: number, offM = 0) => ({ xM: 10 * share, yM: 5 * share + offM });

test('an edge is found on every side it lies on, whichever way it runs', () => {
  expect(sides.under(at(0.3), at(0.7))).toEqual([FENCE, WALL]);
  expect(sides.under(at(0.7), at(0.3))).toEqual([FENCE, WALL]);
  expect(sides.under(at(0), at(0.1))).toEqual([FENCE]); // the wall begins at a fifth
});

test('an edge that reaches past a side or stands off it is not on it', () => {
  expect(sides.under(at(0.9), at(1.1))).toEqual([WALL]);
  expect(sides.under(at(0.3, 0.001), at(0.7, 0.001))).toEqual([]);
  expect(sides.under(at(0.3), at(0.7, 0.001))).toEqual([]);
});

test('no sides hold nothing', () => {
  expect(new TapeSides([]).isEmpty).toBe(true);
  expect(sides.isEmpty).toBe(false);
  expect(new TapeSides([]).under(at(0.3), at(0.7))).toEqual([]);
});
