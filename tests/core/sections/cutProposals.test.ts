import { expect, test } from 'vitest';
import { chordCuts, wholeLineCuts } from '../../../core/sections/cutProposals.ts';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const UP = { normal: { x: 0, y: 1 }, aligned: true };
/** A U open to the top: 10 m wide, arms 3 m, bar 2 m high, 8 m high: 56 m². */
const U = region(points([0, 0], [10, 0], [10, 8], [7, 8], [7, 2], [3, 2], [3, 8], [0, 8]));

test('a whole line costs the length of all its chords', () => {
  const facing = faceAlong(cornersOf(U), UP.normal);
  const [cut] = wholeLineCuts(facing, UP, [{ belowM2: 38, name: 0 }], 0.6, { left: 1e6 });
  expectNear(cut?.levelM ?? Number.NaN, 5, 1e-12, 'm'); // worked by hand: 20 + 6 x 3 = 38 m² below y = 5
  expectNear(cut?.costM ?? Number.NaN, 6, 1e-12, 'm'); // two arms of 3 m
});

test('single chords cut off one arm at the exact height', () => {
  const facing = faceAlong(cornersOf(U), UP.normal);
  const cuts = chordCuts(facing, UP, [{ belowM2: 47, name: 0 }], 0.6, 5, { left: 1e6 });
  expect(cuts.length).toBe(2); // either arm
  for (const cut of cuts) {
    expectNear(cut.levelM, 5, 1e-12, 'm'); // worked by hand: 9 m² of a 3 m arm is its top 3 m
    expectNear(cut.costM, 3, 1e-12, 'm'); // the arm's width
  }
});

test('a border close to a corner that sticks into the ground costs more', () => {
  const open = faceAlong(cornersOf(region(rect(0, 0, 10, 10))), UP.normal);
  const bed = rect(4, 5.2, 2, 2);
  const tight = faceAlong(cornersOf(region(rect(0, 0, 10, 10), bed)), UP.normal);
  const [free] = wholeLineCuts(open, UP, [{ belowM2: 50, name: 0 }], 0.6, { left: 1e6 });
  const [near] = wholeLineCuts(tight, UP, [{ belowM2: 50, name: 0 }], 0.6, { left: 1e6 });
  expect(near?.costM).toBeGreaterThan((free?.costM ?? 0) + 1); // both run 10 m; one leaves a 0.2 m neck under a 0.6 m swath
});
