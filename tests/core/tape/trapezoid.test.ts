import { expect, test } from 'vitest';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { trapezoid } from '../../../core/tape/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { AWAY, kindsOf, given } from '../../support/taped.ts';

test('sides of 30 m and 50 m, 20 m apart, hold 800 m² wherever the far side begins', () => {
  for (const farStartM of [null, 0, -12, 15]) {
    const ring = given(trapezoid({ firstSideM: 30, farSideM: 50, acrossM: 20, farStartM }, AWAY));
    // trade sheet on measuring turf, informedfarmers.com: 30 m, 50 m, height 20 m
    expectNear(signedAreaM2(ring), 800, 1e-8, 'm²');
  }
});

test('without a word on it, the far side stands as far in at both ends', () => {
  const place = { at: { xM: 0, yM: 0 }, bearingDeg: 90 };
  const ring = given(trapezoid({ firstSideM: 10, farSideM: 4, acrossM: 2, farStartM: null }, place));
  expectNear(ring[3]?.xM ?? Number.NaN, 3, 1e-12, 'm'); // worked by hand: (10 − 4) / 2
  expectNear(ring[2]?.xM ?? Number.NaN, 7, 1e-12, 'm'); // worked by hand: 3 + 4
});

test('a far side of nothing is a triangle and is refused here', () => {
  expect(kindsOf(trapezoid({ firstSideM: 3, farSideM: 0, acrossM: 2, farStartM: null }, AWAY))).toEqual([
    'value/not-positive',
  ]);
});
