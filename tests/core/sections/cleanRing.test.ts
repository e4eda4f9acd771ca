import { expect, test } from 'vitest';
import { cleanRing } from '../../../core/sections/cleanRing.ts';
import { points, rect } from '../../support/builders.ts';

test('a clean ring is left as it is', () => {
  expect(cleanRing(rect(0, 0, 2, 1))).toEqual(rect(0, 0, 2, 1)); // the ring itself
});

test('repeated corners go, at the ends too', () => {
  const ring = points([0, 0], [2, 0], [2, 0], [2, 1], [0, 1], [0, 0]);
  expect(cleanRing(ring)).toEqual(rect(0, 0, 2, 1)); // worked by hand: the rectangle under it
});

test('a spike goes, wherever the ring begins', () => {
  // The rectangle with a whisker 1 m beyond its north-east corner.
  const ring = points([0, 0], [2, 0], [2, 1], [3, 1], [2, 1], [0, 1]);
  for (let start = 0; start < ring.length; start++) {
    const turned = [...ring.slice(start), ...ring.slice(0, start)];
    const clean = cleanRing(turned);
    expect(Math.max(...clean.map((point) => point.xM)), `from corner ${start}`).toBe(2); // the rectangle's width
  }
});
