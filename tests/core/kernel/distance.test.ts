import { describe, expect, test } from 'vitest';
import { distanceM, distanceToEdgeM, lineLengthM, nearestOnEdge } from '../../../core/kernel/distance.ts';
import { points } from '../../support/builders.ts';

test('the length of a line is the sum of its steps', () => {
  expect(distanceM({ xM: 1, yM: 2 }, { xM: 4, yM: 6 })).toBe(5); // 3-4-5 triangle
  expect(lineLengthM(points([0, 0], [3, 4], [3, 10]))).toBe(11); // 3-4-5 triangle and 6
  expect(lineLengthM([])).toBe(0); // no step
});

describe('the nearest place on an edge', () => {
  const from = { xM: 0, yM: 0 };
  const to = { xM: 10, yM: 0 };

  test('never lies beyond its ends', () => {
    expect(nearestOnEdge(from, to, { xM: 14, yM: 3 })).toBe(to);
    expect(distanceToEdgeM(from, to, { xM: 14, yM: 3 })).toBe(5); // 3-4-5 triangle
    expect(nearestOnEdge(from, to, { xM: -4, yM: 3 })).toBe(from);
    expect(distanceToEdgeM(from, to, { xM: -4, yM: 3 })).toBe(5); // 3-4-5 triangle
  });

  test('is the foot of the point where there is one', () => {
    expect(nearestOnEdge(from, to, { xM: 4, yM: 3 })).toEqual({ xM: 4, yM: 0 }); // straight below
    expect(distanceToEdgeM(from, to, { xM: 4, yM: 3 })).toBe(3); // straight up
  });

  test('is the corner itself on an edge without length', () => {
    expect(nearestOnEdge(to, to, from)).toBe(to);
    expect(distanceToEdgeM(to, to, from)).toBe(10); // from one corner to the other
  });
});
