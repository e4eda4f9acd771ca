import { describe, expect, test } from 'vitest';
import { checkRing, signedAreaM2 } from '../../core/kernel/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import { expectNear } from '../support/expectNear.ts';

/** International foot, exactly (NBS 1959). */
const FOOT_M = 0.3048;
const FT2_M2 = FOOT_M * FOOT_M;

/** Surveyed corners come north first, in feet. */
const fromFeet = (...corners: readonly (readonly [northFt: number, eastFt: number])[]): YardPoint[] =>
  corners.map(([northFt, eastFt]) => ({ xM: eastFt * FOOT_M, yM: northFt * FOOT_M }));

const areaFt2 = (ring: readonly YardPoint[]) => Math.abs(signedAreaM2(ring)) / FT2_M2;

/** J. Mahun, Open Access Surveying, Traverse Computations, chapter G (Area), jerrymahun.com. */
describe('surveyed traverses have their published areas', () => {
  test('four points of a worked example', () => {
    const ring = fromFeet([500, 2000], [323.614, 1561.426], [526.996, 1488.321], [719.336, 1686.956]);
    // Mahun, chapter G, example 1: column sums 3,384,174.1 and 3,590,045.6; half their difference.
    expectNear(areaFt2(ring), 102_935.7, 0.1, 'ft²');
    expectNear(areaFt2(ring) / 43_560, 2.3631, 5e-5, 'acre'); // same, 2.3631 ac
  });

  test('five points of a self-study problem, with the error its author states', () => {
    const ring = fromFeet(
      [1541.207, 2215.89],
      [1373.915, 2336.574],
      [1299.818, 2350.205],
      [1343.189, 2523.212],
      [1569.36, 2359.08],
    );
    expectNear(areaFt2(ring), 38_970, 5, 'ft²'); // Mahun, solution Traverse Area (1): 38,970 ± 5 ft²
  });

  const A = [600, 1000] as const;
  const C = [254.542, 1209.288] as const;
  const E = [97.543, 566.876] as const;
  const F = [470.303, 397.969] as const;

  test('four corners of a parcel, with the error its author states', () => {
    expectNear(areaFt2(fromFeet(A, C, E, F)), 250_550, 20, 'ft²'); // Mahun, solution Traverse Area (2): 250,550 ± 20 ft²
  });

  test('but the same corners taken in an order that crosses are refused, not measured', () => {
    const crossing = checkRing(fromFeet(A, E, C, F), 'parcel', 'Parcel');
    expect(crossing).toMatchObject({ ok: false, problems: [{ kind: 'shape/self-crossing' }] }); // our own order; the source measures the four parcel corners only
    expect(checkRing(fromFeet(A, C, E, F), 'parcel', 'Parcel').ok).toBe(true);
  });
});

test('a triangle of an exercise', () => {
  const ring = [
    { xM: 2000, yM: 2000 },
    { xM: 2600, yM: 2600 },
    { xM: 1200, yM: 3500 },
  ];
  // Fundamentals of Surveying, module 5: (N, E) 2000, 2000; 2600, 2600; 3500, 1200. 690,000 by cross product.
  expect(signedAreaM2(ring)).toBe(690_000);
});
