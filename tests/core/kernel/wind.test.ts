import { expect, test } from 'vitest';
import { windIn } from '../../../core/kernel/index.ts';

const LONG_LOT = { minXM: 10, minYM: 0, maxXM: 50, maxYM: 4 };

test('the corners and the middles of the sides of a box lie to the eight winds, however long it is', () => {
  const places = [30, 50, 50, 50, 30, 10, 10, 10].map((xM, i) => ({
    xM,
    yM: [4, 4, 2, 0, 0, 0, 2, 4][i] ?? -1,
  }));
  const winds = places.map((place) => windIn(LONG_LOT, place));
  expect(winds.map(({ letters }) => letters)).toEqual(['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW']); // clockwise
  expect(winds.map(({ name }) => name)[3]).toBe('south-east'); // (50, 0): east of the middle, and south of it
});

test('a box without width still has a north and a south', () => {
  const line = { minXM: 3, minYM: 0, maxXM: 3, maxYM: 8 };
  expect(windIn(line, { xM: 3, yM: 8 }).letters).toBe('N'); // above its middle
  expect(windIn(line, { xM: 3, yM: 0 }).letters).toBe('S'); // below its middle
});
