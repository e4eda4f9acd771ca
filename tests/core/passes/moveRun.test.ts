import { expect, test } from 'vitest';
import type { Leg } from '../../../core/passes/leg.ts';
import { moveRun } from '../../../core/passes/moveRun.ts';
import { rect } from '../../support/builders.ts';

/** A lane 10 m long at height y, walked east. */
function lane(y: number): Leg {
  const [enter, leave] = [
    { xM: 0, yM: y },
    { xM: 10, yM: y },
  ];
  return { walk: { kind: 'lane', line: [enter, leave], isRing: false }, enter, leave };
}

const FROM_SOUTH = { from: { xM: 0, yM: 0 }, to: null };

test('a lane walked out of turn goes where it belongs', () => {
  const legs = [lane(40), lane(0), lane(80)];
  expect(moveRun(legs, 0, 1, FROM_SOUTH)).toBe(true);
  expect(legs.map((leg) => leg.enter.yM)).toEqual([0, 40, 80]); // by height from the start
});

test('a lane that lies well stays', () => {
  const legs = [lane(0), lane(40), lane(80)];
  expect(moveRun(legs, 1, 1, FROM_SOUTH)).toBe(false);
  expect(legs.map((leg) => leg.enter.yM)).toEqual([0, 40, 80]); // unchanged
});

test('a ring is entered where its new place suits it', () => {
  const corner = { xM: 100, yM: 100 };
  const ring: Leg = {
    walk: { kind: 'perimeter', line: rect(11, -2, 89, 102), isRing: true },
    enter: corner,
    leave: corner,
  };
  const legs = [ring, lane(0)];
  expect(moveRun(legs, 0, 1, FROM_SOUTH)).toBe(true);
  expect(legs[1]?.enter).toEqual({ xM: 11, yM: 0 }); // the foot of the lane's end on the ring
});
