import { describe, expect, test } from 'vitest';
import { twoTapes } from '../../../core/tape/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { kindsOf, given } from '../../support/taped.ts';

const HOUSE = { xM: 0, yM: 0 };
const east = (xM: number) => ({ xM, yM: 0 });

describe('a point from two landmarks', () => {
  test('40 apart with tapes of 50 and 30 is at (40, 30)', () => {
    const { at, cautions } = given(twoTapes(HOUSE, east(40), 50, 30, 'left'));
    expectNear(at.xM, 40, 1e-12, 'm'); // method of UF/IFAS EP427; x = (d1² − d2² + b²) / 2b
    expectNear(at.yM, 30, 1e-12, 'm'); // method of UF/IFAS EP427; y = √(d1² − x²)
    expect(cautions).toEqual([]);
  });

  test('20 apart with tapes of 15 and 13 is at (11.4, ±9.74885), by the side', () => {
    const left = given(twoTapes(HOUSE, east(20), 15, 13, 'left')).at;
    const right = given(twoTapes(HOUSE, east(20), 15, 13, 'right')).at;
    expectNear(left.xM, 11.4, 1e-12, 'm'); // plane geometry: (225 − 169 + 400) / 40
    expectNear(left.yM, 9.74885, 5e-6, 'm'); // plane geometry: √(225 − 11.4²)
    expectNear(right.yM, -9.74885, 5e-6, 'm'); // its mirror
  });

  test('is as far from both landmarks as the tapes say, however they lie', () => {
    const a = { xM: -31.2, yM: 8.4 };
    const b = { xM: -20.1, yM: -9.7 };
    const { at } = given(twoTapes(a, b, 17.3, 12.9, 'right'));
    expectNear(Math.hypot(at.xM - a.xM, at.yM - a.yM), 17.3, 1e-12, 'm'); // the first tape as given
    expectNear(Math.hypot(at.xM - b.xM, at.yM - b.yM), 12.9, 1e-12, 'm'); // the second tape as given
    const turn = (b.xM - a.xM) * (at.yM - a.yM) - (b.yM - a.yM) * (at.xM - a.xM);
    expect(turn).toBeLessThan(0); // right of the line from a to b turns clockwise
  });

  test('nearly in line with them is given with a caution that says how loose it is', () => {
    const { at, timesError, cautions } = given(twoTapes(HOUSE, east(20), 10.05, 10.05, 'left'));
    expect(cautions.map(({ kind }) => kind)).toEqual(['value/tapes-cross-flat']);
    // by measure: 1 mm more on the first tape moves the point by about timesError mm
    const moved = given(twoTapes(HOUSE, east(20), 10.051, 10.05, 'left')).at;
    expectNear(Math.hypot(moved.xM - at.xM, moved.yM - at.yM), timesError * 1e-3, 1e-4, 'm');
  });

  test('whose tapes cross at a right angle is as sure as the tapes', () => {
    // closed form: 3-4-5, sin 90° = 1
    expectNear(given(twoTapes(HOUSE, east(5), 4, 3, 'left')).timesError, 1, 1e-12, 'times');
  });

  test('is refused when the tapes cannot meet or the landmarks are one', () => {
    expect(kindsOf(twoTapes(HOUSE, east(40), 10, 20, 'left'))).toEqual(['value/tapes-do-not-meet']);
    expect(kindsOf(twoTapes(HOUSE, east(10), 40, 20, 'left'))).toEqual(['value/tapes-do-not-meet']);
    expect(kindsOf(twoTapes(HOUSE, HOUSE, 4, 4, 'left'))).toEqual(['value/not-positive']);
  });
});
