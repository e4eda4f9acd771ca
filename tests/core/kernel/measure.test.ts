import { grown } from '../../../core/kernel/measure.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  boxesMeet,
  orientRegion,
  regionAreaM2,
  regionsAreaM2,
  ringBounds,
  ringPerimeterM,
  signedAreaM2,
} from '../../../core/kernel/index.ts';
import { lShape, moved, points, rect, region, regularPolygon, withBed } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomStar, seededRandom } from '../../support/randomYards.ts';

describe('the area of a ring', () => {
  test('is width times height for a rectangle, positive when it runs counter-clockwise', () => {
    expect(signedAreaM2(rect(3, 4, 20, 30))).toBe(600); // 20 * 30, closed form
    expect(signedAreaM2(rect(3, 4, 20, 30).reverse())).toBe(-600); // 20 * 30, other way round
  });

  test('is half base times height for a triangle', () => {
    expect(signedAreaM2(points([0, 0], [50, 0], [11, 80]))).toBe(2000); // 50 * 80 / 2, closed form
  });

  test('of an L is its rectangle less the notch', () => {
    expect(signedAreaM2(lShape(20, 10, 5, 4))).toBe(180); // 20 * 10 - 5 * 4, by hand
  });

  test('of a many-cornered round bed is n/2 r² sin(2π/n)', () => {
    const closedFormM2 = (720 / 2) * 9 * Math.sin((2 * Math.PI) / 720); // n = 720, r = 3
    expectNear(signedAreaM2(regularPolygon({ xM: 5, yM: -2 }, 3, 720)), closedFormM2, 1e-12, 'm²');
  });

  test('of nothing is nothing', () => {
    expect(signedAreaM2([])).toBe(0); // no ground
    expect(signedAreaM2(points([1, 1], [2, 2]))).toBe(0); // two corners enclose no ground
  });

  test('keeps its digits at the coordinates of a map sheet', () => {
    const far = moved(rect(0, 0, 20, 30), 0, 500_000, 4_000_000);
    expect(signedAreaM2(far)).toBe(600); // 20 * 30; whole numbers stay exact
  });
});

describe('whatever the ring, its area', () => {
  const star = fc
    .tuple(fc.integer({ min: 1, max: 1e9 }), fc.integer({ min: 3, max: 60 }))
    .map(([seed, corners]) => randomStar(seededRandom(seed), corners, { xM: 0, yM: 0 }, 30, 0.8));
  /** Rounding of some dozens of products of tens of metres. */
  const SLACK_M2 = 1e-10;

  test('survives turning and moving', () => {
    fc.assert(
      fc.property(star, fc.double({ min: -7, max: 7, noNaN: true }), (ring, turnRad) => {
        expectNear(signedAreaM2(moved(ring, turnRad, 7, -3)), signedAreaM2(ring), SLACK_M2, 'm²');
      }),
    );
  });

  test('changes its sign alone when reversed', () => {
    fc.assert(
      fc.property(star, (ring) => {
        expectNear(signedAreaM2([...ring].reverse()), -signedAreaM2(ring), SLACK_M2, 'm²');
      }),
    );
  });

  test('does not depend on the corner one starts with', () => {
    fc.assert(
      fc.property(star, fc.nat(59), (ring, at) => {
        const start = at % ring.length;
        const again = [...ring.slice(start), ...ring.slice(0, start)];
        expectNear(signedAreaM2(again), signedAreaM2(ring), SLACK_M2, 'm²');
      }),
    );
  });

  test('is not changed by corners added along its edges', () => {
    fc.assert(
      fc.property(star, (ring) => {
        const more = ring.flatMap((from, i) => {
          const to = ring[(i + 1) % ring.length] ?? from;
          return [from, { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 }];
        });
        expectNear(signedAreaM2(more), signedAreaM2(ring), SLACK_M2, 'm²');
      }),
    );
  });

  test('grows with the square of the scale', () => {
    fc.assert(
      fc.property(star, fc.double({ min: 0.01, max: 100, noNaN: true }), (ring, k) => {
        const scaled = ring.map(({ xM, yM }) => ({ xM: k * xM, yM: k * yM }));
        expectNear(signedAreaM2(scaled), k * k * signedAreaM2(ring), SLACK_M2 * Math.max(1, k * k), 'm²');
      }),
    );
  });
});

describe('regions', () => {
  test('weigh their outer ring less their holes, whichever way these run', () => {
    const yard = withBed(region(rect(0, 0, 10, 10), rect(1, 1, 2, 2)), rect(5, 5, 3, 1));
    expect(regionAreaM2(yard)).toBe(93); // 100 - 4 - 3, by hand
    expect(regionAreaM2({ outer: rect(0, 0, 10, 10), holes: [rect(1, 1, 2, 2)] })).toBe(96); // 100 - 4
    expect(regionsAreaM2([yard, region(rect(20, 0, 1, 1))])).toBe(94); // 93 + 1
  });

  test('are turned outer ring counter-clockwise, holes clockwise', () => {
    const turned = orientRegion({ outer: rect(0, 0, 4, 4).reverse(), holes: [rect(1, 1, 1, 1)] });
    expect(signedAreaM2(turned.outer)).toBe(16); // 4 * 4, counter-clockwise
    expect(turned.holes.map(signedAreaM2)).toEqual([-1]); // 1 * 1, clockwise
  });
});

test('the edge of a ring is walked with its closing side', () => {
  expect(ringPerimeterM(rect(0, 0, 3, 4))).toBe(14); // 2 * (3 + 4)
  expect(ringPerimeterM(points([0, 0], [3, 0], [3, 4]))).toBe(12); // 3 + 4 + 5
});

test('the box of a ring holds its outermost corners', () => {
  const bounds = ringBounds(points([1, 7], [-2, 3], [5, -4]));
  expect(bounds).toEqual({ minXM: -2, minYM: -4, maxXM: 5, maxYM: 7 }); // read off the corners
});

test('a box is grown on every side', () => {
  expect(grown({ minXM: 0, minYM: 1, maxXM: 2, maxYM: 3 }, 0.5)).toEqual({
    minXM: -0.5,
    minYM: 0.5,
    maxXM: 2.5,
    maxYM: 3.5,
  });
});

test('boxes meet when they share a point, be it one on their edges', () => {
  const box = (minXM: number, minYM: number) => ({ minXM, minYM, maxXM: minXM + 2, maxYM: minYM + 3 });
  const meets = [box(1, 1), box(2, 3), box(2.1, 0), box(0, -3.1)].map((other) => boxesMeet(box(0, 0), other));
  expect(meets).toEqual([true, true, false, false]); // overlaps, touches a corner, beside, below
});
