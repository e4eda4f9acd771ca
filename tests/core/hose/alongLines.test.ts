import { expect, test } from 'vitest';
import { farthestAlong, nearestAlong } from '../../../core/hose/alongLines.ts';
import { clearGround } from '../../../core/hose/clearGround.ts';
import { hoseWays } from '../../../core/hose/hoseWays.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const WAYS = hoseWays(clearGround({ barriers: [region(rect(0, 0, 10, 4))], clearanceM: 0 }), {
  id: 's',
  name: 'front',
  at: at(5, 0),
});
/** Stated of both: found this near. */
const WITHIN_M = 1e-3;

test('the most hose along a line may lie between its ends, where both ways round are as long', () => {
  const most = farthestAlong(WAYS, [[at(4, 6), at(6, 6)]]);
  // (5, 0) along the wall to (0, 0), up to (0, 4), then to (5, 6), the middle of the line: 5 + 4 + √(5² + 2²)
  expectNear(most?.lengthM ?? 0, 9 + Math.sqrt(29), WITHIN_M, 'm');
  expectNear(most?.at.xM ?? 0, 5, 0.01, 'm'); // by symmetry
});

test('the least hose may lie between the ends too', () => {
  const least = nearestAlong(WAYS, [[at(-20, -3), at(20, -3)], [at(40, 0)]]);
  expectNear(least?.lengthM ?? 0, 3, WITHIN_M, 'm'); // straight south from (5, 0)
});

test('a line of one place is that place, and of no lines there is none', () => {
  expectNear(farthestAlong(WAYS, [[at(5, -7)]])?.lengthM ?? 0, 7, 1e-8, 'm'); // straight south
  expect(farthestAlong(WAYS, [])).toBeUndefined();
});

test('what no hose gets to is the farthest, and never the nearest', () => {
  const court = hoseWays(
    clearGround({ barriers: [region(rect(0, 0, 10, 8), rect(3, 3, 2, 2))], clearanceM: 0 }),
    { id: 's', name: 'front', at: at(5, -1) },
  );
  const lines = [[at(4, 4)], [at(5, -3), at(5, -5)]];
  expect(farthestAlong(court, lines)?.lengthM).toBe(Infinity);
  expectNear(nearestAlong(court, lines)?.lengthM ?? 0, 2, WITHIN_M, 'm'); // from (5, −1) to (5, −3)
});
