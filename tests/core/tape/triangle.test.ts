import { expect, test } from 'vitest';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { triangleByHeight, triangleBySides } from '../../../core/tape/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { AWAY, EAST, kindsOf, given } from '../../support/taped.ts';

test('a base of 50 m and a height of 80 m hold 2,000 m² wherever the height stands', () => {
  for (const footM of [null, 0, -20, 75]) {
    // WestOne training toolbox, unit fn27 on turf areas: base 50 m, height 80 m
    expectNear(signedAreaM2(given(triangleByHeight(50, 80, footM, AWAY))), 2000, 1e-8, 'm²');
  }
});

test('sides of 13, 14 and 15 hold 84', () => {
  // Heron's formula: s = 21, √(21·8·7·6) = 84
  expectNear(signedAreaM2(given(triangleBySides(13, 14, 15, AWAY))), 84, 1e-9, 'm²');
});

test('the sides are drawn in walking order', () => {
  const [a, b, c] = given(triangleBySides(13, 14, 15, EAST));
  const lengthM = (p = EAST.at, q = EAST.at) => Math.hypot(p.xM - q.xM, p.yM - q.yM);
  expectNear(lengthM(a, b), 13, 1e-12, 'm'); // the first side as given
  expectNear(lengthM(b, c), 14, 1e-12, 'm'); // the second side as given
  expectNear(lengthM(c, a), 15, 1e-12, 'm'); // the third side as given
});

test('sides that do not close are refused', () => {
  expect(kindsOf(triangleBySides(3, 4, 8, EAST))).toEqual(['value/tapes-do-not-meet']);
  expect(kindsOf(triangleByHeight(3, 0, null, EAST))).toEqual(['value/not-positive']);
});
