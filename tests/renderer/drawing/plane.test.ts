import { describe, expect, test } from 'vitest';
import {
  alongBearing,
  alongLine,
  bearingDegOf,
  nearestOnEdge,
  ringHolds,
} from '../../../renderer/drawing/plane.ts';
import { lShape, points } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

describe('straight-line steps', () => {
  test.each([
    [0, 0, 5], // north
    [90, 5, 0], // east
    [180, 0, -5], // south
    [270, -5, 0], // west
  ])('a bearing of %d° goes to (%d, %d), and is read back', (bearingDeg, xM, yM) => {
    const to = alongBearing({ xM: 0, yM: 0 }, 5, bearingDeg);
    expectNear(to.xM, xM, 1e-12, 'm');
    expectNear(to.yM, yM, 1e-12, 'm');
    expectNear(bearingDegOf({ xM: 0, yM: 0 }, to) ?? Number.NaN, bearingDeg, 1e-9, '°');
  });

  test('a point has no bearing to itself', () => {
    expect(bearingDegOf({ xM: 1, yM: 1 }, { xM: 1, yM: 1 })).toBeUndefined();
  });

  test('so far along a line turns its corners, and ends with it', () => {
    const line = points([0, 0], [4, 0], [4, 3]);
    expect(alongLine(line, 5)).toEqual({ xM: 4, yM: 1 }); // 4 m east, 1 m north
    expect(alongLine(line, 7.5)).toBeUndefined(); // it is 7 m long
  });

  test('the nearest place on an edge never lies beyond its ends', () => {
    const [from, to] = points([0, 0], [10, 0]);
    if (!from || !to) throw new Error('two points');
    expect(nearestOnEdge(from, to, { xM: 14, yM: 3 })).toEqual(to);
    expect(nearestOnEdge(from, to, { xM: 4, yM: 3 })).toEqual({ xM: 4, yM: 0 }); // straight below
  });

  test('a point in the notch of an L is outside it', () => {
    const ell = lShape(10, 10, 4, 4);
    expect(ringHolds(ell, { xM: 8, yM: 8 })).toBe(false);
    expect(ringHolds(ell, { xM: 8, yM: 4 })).toBe(true);
    expect(ringHolds(ell, { xM: 3, yM: 8 })).toBe(true);
  });
});
