import { describe, expect, test } from 'vitest';
import {
  isApart,
  placeClear,
  regionsAreaM2,
  ringBounds,
  withClearHoles,
} from '../../../core/kernel/index.ts';
import { Defect } from '../../../core/result.ts';
import type { Ring } from '../../../core/spaces.ts';
import { rect, region } from '../../support/builders.ts';

const west = region(rect(0, 0, 10, 10));
const east = region(rect(20, 0, 10, 10));
const candidate = (ring: Ring) => ({ ring, bounds: ringBounds(ring) });

describe('holes that need no overlay', () => {
  test('are placed in the region they lie clear in', () => {
    const rings = [rect(22, 2, 2, 2), rect(2, 2, 2, 2), rect(9, 2, 2, 2), rect(40, 0, 1, 1)];
    expect(placeClear([west, east], rings.map(candidate))).toEqual([1, 0, -1, -1]); // across the edge, outside
  });

  test('are not those whose boxes meet, nor those of several rings', () => {
    const near = [rect(2, 2, 2, 2), rect(4, 4, 1, 1)]; // a corner in common
    expect(placeClear([west], near.map(candidate))).toEqual([-1, -1]);
    expect(placeClear([west], [{ ring: undefined, bounds: ringBounds(rect(1, 1, 1, 1)) }])).toEqual([-1]);
  });

  test('are not those that an edge bent by rounding would reach', () => {
    expect(placeClear([west], [candidate(rect(2, 3e-6, 2, 2))])).toEqual([-1]);
    expect(placeClear([west], [rect(2, 2, 2, 2), rect(4 + 3e-6, 2, 2, 2)].map(candidate))).toEqual([-1, -1]);
  });

  test('are put into the piece that is round them, whatever an overlay made of the regions', () => {
    const pieces = [region(rect(0, 0, 10, 3)), region(rect(0, 5, 10, 5))];
    const [, upper] = withClearHoles(pieces, [[rect(2, 6, 2, 2), 0]], false);
    expect(upper?.holes).toEqual([rect(2, 6, 2, 2).reverse()]);
    expect(regionsAreaM2(withClearHoles([west, east], [[rect(22, 2, 2, 2), 1]], true))).toBe(196); // 200 - 4
    expect(() => withClearHoles(pieces, [[rect(0, 40, 1, 1), 0]], false)).toThrow(Defect);
  });
});

test('a ring is apart from regions when it is from each of them', () => {
  expect(isApart([west, east], rect(12, 0, 5, 5))).toBe(true); // between the two
  expect(isApart([west, east], rect(12, 0, 8, 5))).toBe(false); // touches the eastern one
});
