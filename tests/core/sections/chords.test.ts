import { expect, test } from 'vitest';
import { findChords } from '../../../core/sections/chords.ts';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { points, rect, region } from '../../support/builders.ts';

const UP = { x: 0, y: 1 };

test('a cut over a hole runs in two chords', () => {
  const facing = faceAlong(cornersOf(region(rect(0, 0, 10, 10), rect(4, 4, 2, 2))), UP);
  const chords = findChords(facing, 5) ?? [];
  const ends = chords.map(({ start, end }) => [start.at.xM, end.at.xM].sort((a, b) => a - b));
  // Worked by hand: from either side to the hole. Looking up, "along" runs from east to west.
  expect(ends).toEqual([
    [6, 10],
    [0, 4],
  ]);
});

test('a cut through a corner of a hole keeps opening and closing in turn', () => {
  const diamond = points([5, 4], [6, 5], [5, 6], [4, 5]);
  const facing = faceAlong(cornersOf(region(rect(0, 0, 10, 10), diamond)), UP);
  for (const levelM of [4, 6]) {
    const chords = findChords(facing, levelM);
    expect(chords?.length, `at ${levelM}`).toBeGreaterThan(0);
    for (const { start, end } of chords ?? []) {
      expect(start.rising).toBe(true);
      expect(end.rising).toBe(false);
      expect(end.vM).toBeGreaterThanOrEqual(start.vM - 1e-7); // the swap tolerance of the function
    }
  }
});

test('a cut beside the ground has no chord', () => {
  const facing = faceAlong(cornersOf(region(rect(0, 0, 10, 10))), UP);
  expect(findChords(facing, 11)).toEqual([]);
  expect(findChords(facing, -1)).toEqual([]);
});
