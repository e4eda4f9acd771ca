import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcByRadius, arcOf } from '../../../core/curves/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { given, kindsOf } from '../../support/taped.ts';

const WEST = { xM: -3, yM: 0 };
const EAST = { xM: 3, yM: 0 };

test('the short and the long arc of 5 m over a chord of 6 m stand 1 m and 9 m off it', () => {
  // Triangle 3, 4, 5: the middle of the circle is 4 m off the chord; 5 − 4 and 5 + 4
  expectNear(given(arcByRadius(WEST, EAST, 5, 'left')).yM, 1, 1e-12, 'm');
  expectNear(given(arcByRadius(WEST, EAST, 5, 'right')).yM, -1, 1e-12, 'm');
  expectNear(given(arcByRadius(WEST, EAST, 5, 'left', true)).yM, 9, 1e-12, 'm');
});

test('a radius of half the chord is half a circle, either way', () => {
  expectNear(given(arcByRadius(WEST, EAST, 3, 'left')).yM, 3, 1e-12, 'm'); // the radius
  expectNear(given(arcByRadius(WEST, EAST, 3, 'left', true)).yM, 3, 1e-12, 'm');
});

test('an arc of the radius asked for runs through the point, on the side asked for', () => {
  const coordinate = fc.double({ min: -50, max: 50, noNaN: true });
  const point = fc.record({ xM: coordinate, yM: coordinate });
  const side = fc.constantFrom('left' as const, 'right' as const);
  fc.assert(
    fc.property(
      point,
      point,
      fc.double({ min: 1.001, max: 1e4, noNaN: true }),
      side,
      fc.boolean(),
      (from, to, times, on, long) => {
        const chordM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
        fc.pre(chordM > 1e-3);
        const radiusM = (times * chordM) / 2;
        const arc = arcOf(from, given(arcByRadius(from, to, radiusM, on, long)), to);
        expectNear((arc?.radiusM ?? Number.NaN) / radiusM, 1, 1e-7, '');
        expect(Math.abs(arc?.sweepRad ?? Number.NaN) > Math.PI).toBe(long);
        // An arc that bulges to the left is walked clockwise.
        expect(Math.sign(arc?.sweepRad ?? Number.NaN)).toBe(on === 'left' ? -1 : 1);
      },
    ),
    { seed: 20261125 },
  );
});

test.each([
  ['shorter than half the chord', WEST, EAST, 2.99, 'value/radius-below-half-chord'],
  ['of nothing', WEST, EAST, 0, 'value/not-positive'],
  ['that is no number', WEST, EAST, Number.NaN, 'value/not-positive'],
  ['without end', WEST, EAST, Number.POSITIVE_INFINITY, 'value/not-positive'],
  ['between corners at one place', EAST, EAST, 2, 'value/not-positive'],
])('a radius %s is refused', (_, from, to, radiusM, kind) => {
  expect(kindsOf(arcByRadius(from, to, radiusM, 'left'))).toStrictEqual([kind]);
});

test('the refusal tells the least radius', () => {
  const refused = arcByRadius(WEST, EAST, 2, 'left');
  expect(refused.ok ? null : refused.problems[0].facts).toStrictEqual({ radiusM: 2, leastM: 3 }); // half of 6
});
