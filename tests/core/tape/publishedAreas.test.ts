import { describe, expect, test } from 'vitest';
import { tracedRing } from '../../../core/curves/index.ts';
import { checkRing, regionAreaM2, signedAreaM2 } from '../../../core/kernel/index.ts';
import type { Ring } from '../../../core/spaces.ts';
import { circle, ellipse, offsetAreas, offsetsFromBaseline, rectangle } from '../../../core/tape/index.ts';
import { FOOT_M, SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import { resolveZones } from '../../../core/zones/index.ts';
import { groundOf, outline, points, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { seededRandom } from '../../support/randomYards.ts';
import { AWAY, EAST, given, kindsOf } from '../../support/taped.ts';

/**
 * Areas published by others, drawn our way and measured by the kernel. Rectangles, triangles, the trapezoid, the circle of 30 ft, rays,
 * a traverse, and offsets by both rules have theirs in the tests of those figures.
 */

/** A ring given as (north, east) pairs in feet. */
function northEastFt(...pairs: readonly (readonly [number, number])[]): Ring {
  return points(...pairs.map(([northFt, eastFt]) => [eastFt * FOOT_M, northFt * FOOT_M] as const));
}

function areaFt2(ring: Ring): number {
  return Math.abs(regionAreaM2({ outer: ring, holes: [] })) / SQUARE_FOOT_M2;
}

describe('figures', () => {
  test('a lawn of two rectangles and a circle holds 1,215 ft²', () => {
    const parts = [
      given(rectangle(30 * FOOT_M, 15 * FOOT_M, EAST)),
      given(rectangle(15 * FOOT_M, 10 * FOOT_M, AWAY)),
      tracedRing(given(circle(14 * FOOT_M, AWAY))),
    ];
    const sumFt2 = parts.reduce((sum, ring) => sum + areaFt2(ring), 0);
    // LSU AgCenter, Estimating Lawn Areas: 450 + 150 + 615 with π = 3.14; 1,215.75 with π in full
    expectNear(sumFt2, 1215, 1, 'ft²');
    expectNear(sumFt2, 1215.75, 0.005, 'ft²'); // 600 + π × 14²
  });

  test.each([
    [44, 6082],
    [43, 5809],
    [39, 4778],
    [34, 3632],
  ])('a green of %s ft radius holds %s ft²', (radiusFt, expectedFt2) => {
    // Golf Course Industry, “Golf course maintenance math”: how an edge that creeps in loses ground
    expectNear(areaFt2(tracedRing(given(circle(radiusFt * FOOT_M, EAST)))), expectedFt2, 0.5, 'ft²');
  });

  test('an oval of 23 m by 17 m holds 307.09 m², 1.86 % less than the rule of 0.8 × length × width', () => {
    const areaM2 = signedAreaM2(tracedRing(given(ellipse(23, 17, AWAY))));
    expectNear(areaM2, 307.09, 0.005, 'm²'); // closed form π/4 × 23 × 17
    // trade sheet on measuring turf, informedfarmers.com: 312.80 m² by the rule
    expectNear(312.8 / areaM2 - 1, 0.0186, 5e-5, 'of it');
  });
});

describe('coordinates', () => {
  test('of four points hold 102,935.7 ft²', () => {
    // J. Mahun, Open Access Surveying, Traverse Computations, ch. G Area, example 1, (N, E) in ft
    const ring = northEastFt([500, 2000], [323.614, 1561.426], [526.996, 1488.321], [719.336, 1686.956]);
    expectNear(areaFt2(ring), 102_935.7, 0.1, 'ft²'); // half of 3,590,045.6 − 3,384,174.1, the printed column sums
  });

  test('of five points hold 38,970 ± 5 ft²', () => {
    // J. Mahun, self-study solution “Traverse Area (1)”, points 105 to 101
    const ring = northEastFt(
      [1541.207, 2215.89],
      [1373.915, 2336.574],
      [1299.818, 2350.205],
      [1343.189, 2523.212],
      [1569.36, 2359.08],
    );
    expectNear(areaFt2(ring), 38_970, 5, 'ft²'); // as printed
    expectNear(areaFt2(ring), 38_965.82, 0.005, 'ft²'); // recomputed from the printed coordinates
  });

  test('of a parcel’s four corners hold 250,550 ± 20 ft², in the order of its edge only', () => {
    // J. Mahun, self-study solution “Traverse Area (2)”: corners A, C, F, E of a traverse A to F
    const [a, c, f, e] = [
      [600, 1000],
      [254.542, 1209.288],
      [97.543, 566.876],
      [470.303, 397.969],
    ] as const;
    const ring = northEastFt(a, c, f, e);
    expectNear(areaFt2(ring), 250_550, 20, 'ft²'); // as printed
    expectNear(areaFt2(ring), 250_552.09, 0.005, 'ft²'); // recomputed from the printed coordinates
    // The solution's warning: points taken in the order surveyed rather than round the edge. They cross and are refused.
    expect(kindsOf(checkRing(northEastFt(a, c, e, f), '', 'parcel'))).toEqual(['shape/self-crossing']);
  });

  test('of a triangle hold 690,000 square units', () => {
    // exercise, “Module 5 Fundamentals of Surveying”, (N, E); the answer by hand: ½ |600 × (−800) − 600 × 1500|
    const ring = points([2000, 2000], [2600, 2600], [1200, 3500]);
    expectNear(Math.abs(signedAreaM2(ring)), 690_000, 1e-6, 'm²');
  });
});

describe('offsets', () => {
  test('that are nothing at both ends: spacing times their sum is the trapezoidal rule', () => {
    // Clemson HGIC 1220 and LSU AgCenter state the first, surveying texts the second; equal when both ends are 0
    const random = seededRandom(3);
    const inner = Array.from({ length: 9 }, () => 2 + 10 * random());
    const ring = given(offsetsFromBaseline([0, ...inner, 0], [3], AWAY));
    const bySum = 3 * inner.reduce((sum, offset) => sum + offset, 0);
    expectNear(signedAreaM2(ring), bySum, 1e-9, 'm²'); // the identity
    expectNear(offsetAreas([0, ...inner, 0], [3]).trapezoidAreaM2, bySum, 1e-9, 'm²'); // the identity
  });

  test('closer together come closer to the true area of a half round', () => {
    // survey fieldwork exercise 20: accuracy rises as the spacing falls; the true area is ½ π 8²
    const missedM2 = [8, 4, 2, 1, 0.5].map((spacingM) => {
      const offsetsM = Array.from({ length: 16 / spacingM + 1 }, (_, i) =>
        Math.sqrt(Math.max(0, 64 - (i * spacingM - 8) ** 2)),
      );
      return Math.PI * 32 - signedAreaM2(given(offsetsFromBaseline(offsetsM, [spacingM], EAST)));
    });
    expect([...missedM2].sort((a, b) => b - a)).toEqual(missedM2);
    expect(missedM2.at(-1)).toBeLessThan(0.01 * Math.PI * 32); // closed form: the true area
  });
});

test('beds, drive and house are taken from the gross', () => {
  // Univ. of Georgia urban agriculture page (Waltz): lawn = lot less what is not lawn; by hand 5,000 − 1,200 − 400 − 150
  const ft = (...sides: readonly [number, number, number, number]) => {
    const [xFt, yFt, wideFt, highFt] = sides;
    return rect(xFt * FOOT_M, yFt * FOOT_M, wideFt * FOOT_M, highFt * FOOT_M);
  };
  const yard = groundOf([
    outline('zone', 'lot', ft(0, 0, 100, 50)),
    outline('building', 'house', ft(10, 5, 40, 30)),
    outline('hardscape', 'drive', ft(60, 0, 10, 40)),
    outline('bed', 'bed', ft(80, 10, 15, 10)),
  ]);
  const [lot] = given(resolveZones(yard)).zones;
  expectNear((lot?.turfAreaM2 ?? Number.NaN) / SQUARE_FOOT_M2, 3250, 1e-4, 'ft²');
});
