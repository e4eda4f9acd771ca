import { expect, test } from 'vitest';
import { findChords } from '../../../core/sections/chords.ts';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { lengthAndSlope, partingRuns } from '../../../core/sections/partingRuns.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('a line over a bed parts the ground by both its runs together', () => {
  const bedded = region(rect(0, 0, 10, 4), points([2, 1], [5, 1], [5, 2], [2, 2]));
  const chords = findChords(faceAlong(cornersOf(bedded), { x: 1, y: 0 }), 3) ?? [];
  expect(partingRuns(chords, Infinity).map((run) => run.length)).toEqual([2]); // 1 m and 2 m, with the bed between
  expect(partingRuns(chords, 2)).toEqual([]); // 3 m of cut is more than 2
});

test('the runs through two prongs part the ground each by itself', () => {
  const fork = region(points([0, 0], [6, 0], [6, 5], [4, 5], [4, 1], [2, 1], [2, 5], [0, 5]));
  const chords = findChords(faceAlong(cornersOf(fork), { x: 0, y: 1 }), 3) ?? [];
  expect(partingRuns(chords, Infinity).map((run) => run.length)).toEqual([1, 1]); // one a prong
});

test('a cut through a wedge gets longer as the wedge opens', () => {
  const wedge = region(points([0, 0], [8, 0], [8, 4]));
  const chords = findChords(faceAlong(cornersOf(wedge), { x: 1, y: 0 }), 6) ?? [];
  const [lengthM, slope] = lengthAndSlope(chords);
  expectNear(lengthM, 3, 1e-12, 'm'); // half the way along, by hand
  expectNear(slope, 0.5, 1e-12, 'm/m'); // 4 m over 8 m
});
