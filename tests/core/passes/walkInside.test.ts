import { test } from 'vitest';
import { makeWalkable } from '../../../core/passes/walkInside.ts';
import { lShape, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('a free way is straight', () => {
  const { wayM } = makeWalkable([region(rect(0, 0, 10, 10))]);
  expectNear(wayM({ xM: 1, yM: 1 }, { xM: 4, yM: 5 }), 5, 1e-12, 'm'); // 3-4-5 triangle
});

test('a way bends round the inner corner of an L', () => {
  const { wayM } = makeWalkable([region(lShape(10, 10, 6, 6))]);
  const expected = Math.hypot(2, 5) + Math.hypot(5, 2); // over the corner at (4, 4)
  expectNear(wayM({ xM: 2, yM: 9 }, { xM: 9, yM: 2 }), expected, 1e-9, 'm');
});

test('a way goes round a bed, not over it from corner to corner', () => {
  const { wayM } = makeWalkable([region(rect(0, 0, 20, 20), rect(8, 8, 4, 4))]);
  // Over two corners of the bed: (11, 0) lies on neither side, so both ways are the same by symmetry.
  const expected = 2 * Math.sqrt(65) + 4;
  expectNear(wayM({ xM: 20, yM: 11 }, { xM: 0, yM: 11 }), Math.min(expected, expected + 4), 1e-9, 'm'); // by (12,12), (8,12)
  expectNear(wayM({ xM: 8, yM: 8 }, { xM: 12, yM: 12 }), 8, 1e-9, 'm'); // two sides of 4 m, not the diagonal
});

test('along an edge is on the ground', () => {
  const { wayM } = makeWalkable([region(rect(0, 0, 20, 20), rect(8, 8, 4, 4))]);
  expectNear(wayM({ xM: 8, yM: 8 }, { xM: 12, yM: 8 }), 4, 1e-9, 'm'); // the bed's own edge
});

test('between pieces that do not meet the straight line is given', () => {
  const { wayM } = makeWalkable([region(rect(0, 0, 2, 2)), region(rect(5, 0, 2, 2))]);
  expectNear(wayM({ xM: 1, yM: 1 }, { xM: 6, yM: 1 }), 5, 1e-12, 'm'); // 6 - 1
});
