import { describe, expect, test } from 'vitest';
import { SightLines } from '../../../core/kernel/index.ts';
import { points, rect, region } from '../../support/builders.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
/** A house with a court in it, and a shed that touches the house's north-east corner. */
const HOUSE = region(rect(0, 0, 10, 8), rect(3, 3, 2, 2));
const SHED = region(rect(10, 8, 3, 3));
const LINES = new SightLines([HOUSE, SHED]);

describe('a straight line', () => {
  test.each([
    ['past the house', at(-1, -1), at(12, -1), true],
    ['through the house', at(-1, 4), at(12, 4), false],
    ['along a wall', at(-1, 0), at(12, 0), true],
    ['along a wall, from a corner to the next', at(0, 0), at(10, 0), true],
    ['from a corner to the one across', at(0, 0), at(10, 8), false],
    ['touching a corner', at(-1, 1), at(1, -1), true],
    ['through two corners that touch, over the house and the shed', at(9, 7), at(14, 12), false],
    ['through two corners that touch, between the house and the shed', at(9, 9), at(11, 7), true],
    ['from the middle of a wall away', at(5, 0), at(5, -3), true],
    ['from the middle of a wall into the house', at(5, 0), at(5, 2), false],
    ['to the middle of a wall from inside', at(5, 2), at(5, 0), false],
    ['across the court', at(3, 3), at(5, 5), true],
    ['out of the court', at(4, 4), at(4, -2), false],
    ['of no length', at(5, 0), at(5, 0), true],
  ])('%s', (_name, a, b, isClear) => {
    expect(LINES.isClear(a, b)).toBe(isClear);
    expect(LINES.isClear(b, a)).toBe(isClear);
  });

  test('over the inward corner of an L enters it, over its notch it does not', () => {
    const lines = new SightLines([region(points([0, 0], [10, 0], [10, 4], [4, 4], [4, 10], [0, 10]))]);
    expect(lines.isClear(at(4, 10), at(10, 4))).toBe(true);
    expect(lines.isClear(at(4, 4), at(8, 8))).toBe(true);
    expect(lines.isClear(at(2, 12), at(8, 0))).toBe(false);
    // Through the inward corner: on both sides of it the line is in the L.
    expect(lines.isClear(at(12, -4), at(-4, 12))).toBe(false);
  });

  test('where nothing stands in the way, is clear', () => {
    const none = new SightLines([]);
    expect(none.isClear(at(0, 0), at(9, 9))).toBe(true);
    expect(none.firstMet(at(0, 0), at(9, 9))).toBeUndefined();
    expect(none.holds(at(0, 0))).toBe(false);
    expect([...none.nearest(at(0, 0))]).toEqual([]);
  });
});

test('a place in a wall or on it is held, one in the court or outside is not', () => {
  expect([at(1, 1), at(5, 0), at(0, 0), at(10, 9), at(11, 10)].map((place) => LINES.holds(place))).toEqual(
    Array(5).fill(true),
  );
  expect([at(4, 4), at(-1, 0), at(12, 0), at(9, 9)].map((place) => LINES.holds(place))).toEqual(
    Array(4).fill(false),
  );
});

test('the first edge met is the nearest on the way', () => {
  const met = LINES.firstMet(at(-5, 4), at(20, 4));
  expect(LINES.corners[met ?? -1]?.at).toEqual(at(0, 8)); // the west wall, which runs south from there
  const fromCorner = LINES.firstMet(at(10, 8), at(20, 20));
  expect(LINES.corners[fromCorner ?? -1]?.at.yM).toBe(11); // the shed's far wall, not those that begin at the corner
});

test('edges come nearest first, each with its nearest place', () => {
  const [first, second] = LINES.nearest(at(6, -2));
  expect(first).toMatchObject({ at: at(6, 0), awayM: 2 });
  expect(second?.awayM).toBeCloseTo(Math.hypot(4, 2), 12); // the east wall, at the corner (10, 0)
  expect([...LINES.nearest(at(6, -2))]).toHaveLength(12);
});
