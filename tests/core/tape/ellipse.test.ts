import { describe, expect, test } from 'vitest';
import { tracedRing } from '../../../core/curves/index.ts';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import type { Result } from '../../../core/result.ts';
import type { Ring } from '../../../core/spaces.ts';
import { circle, ellipse } from '../../../core/tape/index.ts';
import { FOOT_M, SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import type { Traced } from '../../../core/yard.ts';
import { expectNear } from '../../support/expectNear.ts';
import { AWAY, EAST, kindsOf, given } from '../../support/taped.ts';

const ringOf = (traced: Result<Traced>): Ring => tracedRing(given(traced));

const RADII_M = [0.1, 0.5, 5, 14 * FOOT_M, 60, 900];

describe('a circle', () => {
  test.each(RADII_M)('of radius %f m has the area πr² within a millionth', (radiusM) => {
    const areaM2 = signedAreaM2(ringOf(circle(radiusM, AWAY)));
    const trueM2 = Math.PI * radiusM * radiusM; // closed form
    expectNear(areaM2, trueM2, trueM2 * 1e-6, 'm²');
  });

  test.each(RADII_M)('of radius %f m is within 2 mm of the curve, corners and sides', (radiusM) => {
    const ring = ringOf(circle(radiusM, EAST));
    ring.forEach((corner, i) => {
      const next = ring[(i + 1) % ring.length] ?? corner;
      for (const share of [0, 0.25, 0.5, 0.75]) {
        const xM = corner.xM + share * (next.xM - corner.xM);
        const yM = corner.yM + share * (next.yM - corner.yM);
        expectNear(Math.hypot(xM, yM), radiusM, 0.002 + 1e-9, 'm'); // closed form: x² + y² = r²
      }
    });
  });

  test('of 5 m is drawn with about a hundred corners, not with hundreds', () => {
    const corners = ringOf(circle(5, EAST)).length;
    expect(corners).toBeLessThan(111); // an inscribed polygon within 2 mm needs π / acos(1 − 0.002/5) = 111
  });

  test('of 30 ft holds 2,827.43 ft²', () => {
    const areaFt2 = signedAreaM2(ringOf(circle(30 * FOOT_M, AWAY))) / SQUARE_FOOT_M2;
    expectNear(areaFt2, 2827.43, 0.005, 'ft²'); // Clemson HGIC 1220, r = 30 ft, with π in full
  });
});

describe('an ellipse', () => {
  test('stays an ellipse, and a circle a circle', () => {
    expect(given(circle(4, AWAY))).toEqual({ kind: 'circle', centre: AWAY.at, radiusM: 4 }); // as given
    expect(given(ellipse(23, 17, AWAY))).toEqual({
      kind: 'ellipse',
      centre: AWAY.at,
      halfLengthM: 11.5, // half of 23
      halfWidthM: 8.5, // half of 17
      bearingDeg: AWAY.bearingDeg,
    });
  });

  test('of 23 m by 17 m holds 307.09 m²', () => {
    // closed form π/4·L·W; the trade rule 0.80·L·W on informedfarmers.com gives 312.80
    expectNear(signedAreaM2(ringOf(ellipse(23, 17, AWAY))), 307.09, 0.005, 'm²');
  });

  test('has its length on the bearing and is within 2 mm of the curve', () => {
    const ring = ringOf(ellipse(40, 6, EAST));
    for (const { xM, yM } of ring) {
      // closed form: the nearest of many points of the true curve
      let nearestM = Infinity;
      const about = Math.atan2(yM / 3, xM / 20);
      for (let i = -400; i <= 400; i++) {
        const turnRad = about + i * 1e-5;
        nearestM = Math.min(nearestM, Math.hypot(20 * Math.cos(turnRad) - xM, 3 * Math.sin(turnRad) - yM));
      }
      expect(nearestM).toBeLessThan(0.002); // the stated accuracy
    }
    expectNear(Math.max(...ring.map(({ xM }) => xM)), 20, 0.002, 'm'); // half of the length
  });
});

test('sizes that are none, or beyond any yard, are refused', () => {
  expect(kindsOf(circle(0, EAST))).toEqual(['value/not-positive']);
  expect(kindsOf(ellipse(3, -1, EAST))).toEqual(['value/not-positive']);
  expect(kindsOf(circle(1e9, EAST))).toEqual(['shape/too-large']);
});
