import { describe, expect, test } from 'vitest';
import {
  fromGrid,
  GRID_M,
  gridAreaM2,
  gridPerimeterM,
  snapRing,
  toGrid,
} from '../../../core/kernel/clipper.ts';
import { signedAreaM2, subtractRegions, unionRegions } from '../../../core/kernel/index.ts';
import { Defect } from '../../../core/result.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('orientation', () => {
  // The library's y may run either way; ours runs up. Whatever goes in, outer rings come out counter-clockwise.
  for (const outer of [rect(0, 0, 10, 10), rect(0, 0, 10, 10).reverse()]) {
    for (const hole of [rect(2, 2, 3, 3), rect(2, 2, 3, 3).reverse()]) {
      const [ring, ...others] = subtractRegions([region(outer)], [{ outer: hole, holes: [] }]);
      expect(others).toEqual([]);
      expectNear(signedAreaM2(ring?.outer ?? []), 100, 1e-9, 'm²'); // 10 * 10, counter-clockwise
      expect(ring?.holes.length).toBe(1);
      expectNear(signedAreaM2(ring?.holes[0] ?? []), -9, 1e-9, 'm²'); // 3 * 3, clockwise
    }
  }
});

describe('the grid', () => {
  test('moves no corner by more than half a step', () => {
    const ring = points([1.23456789, -2.3456789], [7.000000499, 0], [3.3333333, 4.4444444]);
    for (const [i, corner] of snapRing(ring).entries()) {
      expectNear(corner.xM, ring[i]?.xM ?? Number.NaN, 0.5001 * GRID_M, 'm'); // half a step and rounding
      expectNear(corner.yM, ring[i]?.yM ?? Number.NaN, 0.5001 * GRID_M, 'm');
    }
  });

  test('takes corners that fall together as one', () => {
    expect(snapRing(points([0, 0], [0, 1e-8], [4, 0], [4, 4], [1e-8, 0]))).toEqual(
      points([0, 0], [4, 0], [4, 4]),
    );
  });

  test('holds a yard that comes back the same', () => {
    const yard = region(rect(0, 0, 10, 8), rect(1, 1, 2, 2));
    const paths = toGrid([yard]);
    expectNear(gridAreaM2(paths), 76, 1e-9, 'm²'); // 10 * 8 - 2 * 2
    expectNear(gridPerimeterM(paths), 44, 1e-9, 'm'); // 2 * (10 + 8) + 4 * 2
    expect(fromGrid(paths)[0]?.holes.length).toBe(1);
  });

  test('is given nothing but finite corners within reach, or it is our fault', () => {
    expect(() => unionRegions([region(points([0, 0], [Number.NaN, 0], [1, 1]))])).toThrow(Defect);
    expect(() => unionRegions([region(points([0, 0], [1e5, 0], [1, 1]))])).toThrow(Defect);
  });
});
