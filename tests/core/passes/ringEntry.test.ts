import { expect, test } from 'vitest';
import { apartM, bestOnRing, ringFrom } from '../../../core/passes/ringEntry.ts';
import { points, rect } from '../../support/builders.ts';

test('a ring is entered at the foot of the way to it', () => {
  const at = { xM: 3, yM: -2 };
  expect(bestOnRing(rect(0, 0, 10, 4), at, at)).toEqual({ xM: 3, yM: 0 }); // straight above the point
});

test('a ring is walked round and back to where it was entered', () => {
  const line = ringFrom(rect(0, 0, 10, 4), { xM: 3, yM: 0 });
  // Worked by hand: counter-clockwise from the entry.
  expect(line).toEqual(points([3, 0], [10, 0], [10, 4], [0, 4], [0, 0], [3, 0]));
  expect(ringFrom(rect(0, 0, 10, 4), { xM: 10, yM: 4 })).toEqual(
    points([10, 4], [0, 4], [0, 0], [10, 0], [10, 4]),
  ); // from a corner
});

test('a ring walked before is walked from elsewhere without its first point standing twice', () => {
  const once = ringFrom(rect(0, 0, 10, 4), { xM: 10, yM: 4 });
  expect(ringFrom(once, { xM: 10, yM: 0 })).toEqual(points([10, 0], [10, 4], [0, 4], [0, 0], [10, 0])); // by hand
});

test('no point is no way off', () => {
  expect(apartM(null, { xM: 1, yM: 1 })).toBe(0); // nothing to come from
  expect(apartM({ xM: 0, yM: 0 }, { xM: 3, yM: 4 })).toBe(5); // 3-4-5 triangle
});
