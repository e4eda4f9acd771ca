import { describe, expect, test } from 'vitest';
import { alongBearing, alongLine, bearingDegOf } from '../../../renderer/drawing/plane.ts';
import { points } from '../../support/builders.ts';
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
});
