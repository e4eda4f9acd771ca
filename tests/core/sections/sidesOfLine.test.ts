import { expect, test } from 'vitest';
import { findChords } from '../../../core/sections/chords.ts';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { sidesOfLine } from '../../../core/sections/sidesOfLine.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { points, region } from '../../support/builders.ts';

/** West to east, the runs over the ground of the level line `yM` above the first corner; `up`: seen from either side. */
function runsAt(ring: readonly YardPoint[], yM: number, up: boolean): (readonly [number, number])[] {
  const facing = faceAlong(cornersOf(region(ring)), { x: 0, y: up ? 1 : -1 });
  const levelM = up ? yM : -yM;
  const chords = findChords(facing, levelM, sidesOfLine(facing, levelM)) ?? [];
  const ends = chords.map(({ start, end }) => [start.at.xM, end.at.xM].sort((a, b) => a - b));
  return ends.map(([west, east]) => [west as number, east as number] as const).sort((a, b) => a[0] - b[0]);
}

const STEP = points([0, 0], [20, 0], [20, 5], [12, 5], [12, 9], [0, 9]);
const SPIKE_UP = points([0, 0], [8, 0], [10, 5], [12, 0], [20, 0], [20, 9], [0, 9]);
const PEAK = points([0, 0], [20, 0], [20, 4], [10, 5], [0, 4]);

test.each([true, false])('a line ends where an edge begins to run along it, seen from above: %s', (up) => {
  expect(runsAt(STEP, 5, up)).toEqual([[0, 12]]); // the edge from 12 to 20 m is border already
  const mirrored = STEP.map(({ xM, yM }) => ({ xM, yM: 9 - yM })).reverse();
  const fromFirst = 4 - (mirrored[0]?.yM ?? 0);
  expect(runsAt(mirrored, fromFirst, up)).toEqual([[0, 12]]); // the same from the other side
});

test.each([true, false])('a line is broken at a corner that only touches it, seen from above: %s', (up) => {
  expect(runsAt(SPIKE_UP, 5, up)).toEqual([
    [0, 10],
    [10, 20],
  ]); // the bed's tip stands at 10 m
});

test.each([true, false])(
  'a line over the tip of the ground crosses none of it, seen from above: %s',
  (up) => {
    const runs = runsAt(PEAK, 5, up).filter(([west, east]) => east > west);
    expect(runs).toEqual([]); // 10, 5 is the highest corner
  },
);
