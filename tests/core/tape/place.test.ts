import { expect, test } from 'vitest';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { groundRing, placed, requireCount, requirePositive } from '../../../core/tape/place.ts';
import { expectNear } from '../../support/expectNear.ts';
import { AWAY, kindsOf, given } from '../../support/taped.ts';

test('along goes on the bearing and left goes left of it', () => {
  const at = placed({ at: { xM: 10, yM: 20 }, bearingDeg: 0 }, { alongM: 3, leftM: 1 });
  expectNear(at.xM, 9, 1e-12, 'm'); // worked by hand: north's left is west, 10 − 1
  expectNear(at.yM, 23, 1e-12, 'm'); // worked by hand: 20 + 3
});

test('placing keeps every distance', () => {
  const a = placed(AWAY, { alongM: 0, leftM: 0 });
  const b = placed(AWAY, { alongM: 3, leftM: -4 });
  expectNear(Math.hypot(a.xM - b.xM, a.yM - b.yM), 5, 1e-12, 'm'); // 3-4-5 triangle
});

test('a clockwise ring is turned about its first corner', () => {
  const first = { xM: 0, yM: 0 };
  const ring = given(groundRing('it', [first, { xM: 0, yM: 2 }, { xM: 3, yM: 0 }]));
  expect(ring[0]).toBe(first);
  expectNear(signedAreaM2(ring), 3, 1e-12, 'm²'); // closed form: 3 × 2 / 2
});

test('a ring that crosses itself is refused', () => {
  const bow = [
    { xM: 0, yM: 0 },
    { xM: 2, yM: 2 },
    { xM: 2, yM: 0 },
    { xM: 0, yM: 2 },
  ];
  expect(kindsOf(groundRing('it', bow))).toEqual(['shape/self-crossing']);
});

test('sizes that are no lengths, and too few of them, are refused', () => {
  expect(kindsOf(requirePositive({ a: 1, b: Number.NaN, c: 0 }))).toEqual([
    'value/not-positive',
    'value/not-positive',
  ]);
  expect(requirePositive({ a: 1 }).ok).toBe(true);
  expect(kindsOf(requireCount('rays', 2, 3))).toEqual(['value/too-few']);
  expect(requireCount('rays', 3, 3).ok).toBe(true);
});
