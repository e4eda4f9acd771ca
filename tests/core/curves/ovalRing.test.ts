import { describe, expect, test } from 'vitest';
import { MOST_OFF_CURVE_M } from '../../../core/curves/index.ts';
import { ovalRing } from '../../../core/curves/ovalRing.ts';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { mostApartM } from '../../support/curveSamples.ts';
import { expectNear } from '../../support/expectNear.ts';

const AWAY = { centre: { xM: -812.25, yM: 431.5 }, bearingDeg: 213.7 };
const circle = (radiusM: number) => ovalRing({ ...AWAY, halfAlongM: radiusM, halfAcrossM: radiusM });

describe('a circle', () => {
  test.each([0.1, 0.5, 5, 60, 900, 9_000])(
    'of radius %f m has the area πr², counter-clockwise',
    (radiusM) => {
      const trueM2 = Math.PI * radiusM * radiusM; // closed form
      expectNear(signedAreaM2(circle(radiusM)), trueM2, trueM2 * 1e-11, 'm²');
    },
  );

  test('of 5 m is drawn with about a hundred corners, not with hundreds', () => {
    expect(circle(5).length).toBeLessThan(111); // an inscribed polygon within 2 mm needs π / acos(1 − 0.002/5) = 111
  });
});

describe('an ellipse', () => {
  test.each([
    [20, 3],
    [3, 20],
    [0.2, 0.1],
    [400, 1],
  ])(
    'of half axes %f m and %f m is within 2 mm of the curve, has its area and begins on its bearing',
    (a, b) => {
      const ring = ovalRing({ ...AWAY, halfAlongM: a, halfAcrossM: b });
      expectNear(signedAreaM2(ring), Math.PI * a * b, 1e-11 * a * b + 1e-12, 'm²'); // closed form
      const [east, north] = [Math.sin((213.7 * Math.PI) / 180), Math.cos((213.7 * Math.PI) / 180)];
      const n = 4 * ring.length;
      const curve = Array.from({ length: n + 1 }, (_, i) => {
        const [p, q] = [a * Math.cos((2 * Math.PI * i) / n), b * Math.sin((2 * Math.PI * i) / n)];
        return { xM: -812.25 + p * east - q * north, yM: 431.5 + p * north + q * east };
      });
      // The true curve's own chords are off by a sixteenth of what an inscribed ring of as many corners would be.
      const ownM = (Math.max(a, b) * (2 * Math.PI) ** 2) / (8 * n * n);
      expect(mostApartM([...ring, ring[0] as (typeof ring)[0]], curve)).toBeLessThanOrEqual(
        MOST_OFF_CURVE_M + ownM,
      );
      const first = ring[0] as (typeof ring)[0];
      const outM = (first.xM + 812.25) * east + (first.yM - 431.5) * north;
      expectNear(outM, a, MOST_OFF_CURVE_M, 'm'); // the end of the length
    },
  );
});

test.each([0, -3, Number.NaN])(
  'a size of %f leaves no ground, and no corner that is not a number',
  (sizeM) => {
    for (const corner of ovalRing({ ...AWAY, halfAlongM: sizeM, halfAcrossM: sizeM })) {
      expect(corner).toStrictEqual(AWAY.centre);
    }
  },
);

test.each([1e7, 1e300, Number.POSITIVE_INFINITY])(
  'a size of %f m has few corners, all of them numbers',
  (sizeM) => {
    const ring = ovalRing({ ...AWAY, halfAlongM: sizeM, halfAcrossM: 1 });
    expect(ring.length).toBeLessThan(100);
    expect(ring.every(({ xM, yM }) => Number.isFinite(xM) && Number.isFinite(yM))).toBe(true);
  },
);
