import { describe, expect, test } from 'vitest';
import {
  atAlong,
  leftOfM,
  nearestEdgePlace,
  nextMark,
  onMark,
  parallelCut,
} from '../../../core/sections/slideCut.ts';
import { TapeSides } from '../../../core/sections/TapeSides.ts';
import type { Region } from '../../../core/spaces.ts';
import { lShape, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const NO_SIDES = new TapeSides([]);

function placeOn(ground: Region, xM: number, yM: number, sides = NO_SIDES) {
  const place = nearestEdgePlace([ground], { xM, yM }, sides);
  if (place === undefined) throw new Error('no edge');
  return place;
}

describe('a place on an edge', () => {
  const lawn = region(rect(0, 0, 10, 6));

  test('is the nearest, told from the nearer corner', () => {
    const near = placeOn(lawn, 2.3, -1);
    expectNear(near.at.xM, 2.3, 1e-12, 'm');
    expect(near.at.yM).toBe(0);
    expectNear(near.alongM, 2.3, 1e-12, 'm');
    const far = placeOn(lawn, 7.8, 0.4);
    expect(far.side.from).toEqual({ xM: 10, yM: 0 });
    expectNear(far.alongM, 2.2, 1e-12, 'm'); // 10 − 7.8 by hand
  });

  test('goes to the nearest tape mark', () => {
    expectNear(onMark(placeOn(lawn, 2.34, 0), 0.1, NO_SIDES).at.xM, 2.3, 1e-9, 'm');
    // 10 − 7.77 = 2.23 from the far corner: the mark is 2.2 from it.
    expectNear(onMark(placeOn(lawn, 7.77, 0), 0.1, NO_SIDES).at.xM, 7.8, 1e-9, 'm');
  });

  test('goes mark by mark along the edge and stops at its end', () => {
    const start = placeOn(lawn, 2.34, 0);
    expectNear(nextMark(start, 0.1, 1, NO_SIDES).at.xM, 2.4, 1e-9, 'm');
    expectNear(nextMark(start, 0.1, -1, NO_SIDES).at.xM, 2.3, 1e-9, 'm');
    expectNear(nextMark(placeOn(lawn, 2.3, 0), 0.1, 1, NO_SIDES).at.xM, 2.4, 1e-9, 'm');
    expectNear(nextMark(placeOn(lawn, 7.8, 0), 0.1, 1, NO_SIDES).at.xM, 7.9, 1e-9, 'm');
    expect(nextMark(placeOn(lawn, 0, 0.02), 0.1, 1, NO_SIDES).at.yM).toBe(0);
  });

  test('is set a typed distance along, unless the edge ends before', () => {
    expectNear(atAlong(placeOn(lawn, 2, 0), 3.7, NO_SIDES)?.at.xM ?? Number.NaN, 3.7, 1e-12, 'm');
    expect(atAlong(placeOn(lawn, 2, 0), 11, NO_SIDES)).toBeUndefined();
  });

  test('counts along the side a tape is laid along, where the ground’s edge is only a part of it', () => {
    // The outline’s side begins 1 m west of the treated ground’s corner.
    const sides = new TapeSides([{ from: { xM: -1, yM: 0 }, to: { xM: 12, yM: 0 } }]);
    const place = placeOn(lawn, 2.25, 0, sides);
    expectNear(place.alongM, 3.25, 1e-12, 'm'); // 2.25 + 1 by hand
    expectNear(onMark(place, 0.5, sides).at.xM, 2.5, 1e-9, 'm'); // 3.5 − 1 by hand
  });

  test('is found on a hole too, and nowhere without ground', () => {
    const bedded = region(rect(0, 0, 10, 6), rect(4, 2, 2, 2));
    expect(placeOn(bedded, 4.2, 3).at).toEqual({ xM: 4, yM: 3 });
    expect(nearestEdgePlace([], { xM: 0, yM: 0 }, NO_SIDES)).toBeUndefined();
  });
});

describe('a cut moved square to itself', () => {
  const ell = region(lShape(10, 10, 6, 6));
  const north = { from: { xM: 2, yM: 0 }, to: { xM: 2, yM: 10 } };

  test('goes to the left of its way and on to the edges there', () => {
    // Going north, left is west.
    expect(parallelCut(ell, north, 1)).toEqual({ from: { xM: 1, yM: 0 }, to: { xM: 1, yM: 10 } });
    // In the low arm of the L the ground is 4 m deep.
    const low = parallelCut(ell, north, -3);
    expectNear(low?.to.yM ?? Number.NaN, 4, 1e-9, 'm');
    expectNear(low?.to.xM ?? Number.NaN, 5, 1e-9, 'm');
  });

  test('is nowhere where there is no ground left', () => {
    expect(parallelCut(ell, north, 3)).toBeUndefined();
    expect(parallelCut(ell, north, -9)).toBeUndefined();
  });

  test('how far a point lies to the left of a way', () => {
    expectNear(leftOfM(north, { xM: 0.5, yM: 3 }), 1.5, 1e-12, 'm'); // 2 − 0.5 by hand
    expectNear(leftOfM(north, { xM: 5, yM: 3 }), -3, 1e-12, 'm'); // 2 − 5 by hand
  });
});
