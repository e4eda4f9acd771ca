import { expect, test } from 'vitest';
import { regionAreaM2 } from '../../../core/kernel/index.ts';
import { findChords } from '../../../core/sections/chords.ts';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { splitRegion } from '../../../core/sections/splitRegion.ts';
import type { Region } from '../../../core/spaces.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const UP = { x: 0, y: 1 };
/** A U open to the top: 10 m wide, arms 3 m, bar 2 m high. */
const U = region(points([0, 0], [10, 0], [10, 8], [7, 8], [7, 2], [3, 2], [3, 8], [0, 8]));

function splitAt(ground: Region, levelM: number, chosen?: readonly number[]) {
  const facing = faceAlong(cornersOf(ground), UP);
  const chords = findChords(facing, levelM) ?? [];
  return splitRegion(
    facing,
    chosen === undefined ? chords : chosen.map((i) => chords[i] as (typeof chords)[0]),
  );
}

test('a cut through a hole leaves two parts without it', () => {
  const halves = splitAt(region(rect(0, 0, 10, 10), rect(4, 4, 2, 2)), 5);
  expect(halves?.below.holes).toEqual([]);
  expectNear(regionAreaM2(halves?.below as Region), 48, 1e-12, 'm²'); // worked by hand: 50 - 2
  expectNear(regionAreaM2(halves?.above as Region), 48, 1e-12, 'm²'); // worked by hand: 50 - 2
});

test('holes beside the cut stay with their part', () => {
  const halves = splitAt(region(rect(0, 0, 10, 10), rect(1, 1, 2, 2), rect(6, 7, 1, 1)), 5);
  expectNear(regionAreaM2(halves?.below as Region), 46, 1e-12, 'm²'); // worked by hand: 50 - 4
  expectNear(regionAreaM2(halves?.above as Region), 49, 1e-12, 'm²'); // worked by hand: 50 - 1
});

test('a line that leaves three parts is refused, one of its chords is not', () => {
  expect(splitAt(U, 5)).toBeUndefined();
  const halves = splitAt(U, 5, [0]);
  expectNear(regionAreaM2(halves?.above as Region), 9, 1e-12, 'm²'); // worked by hand: one arm, 3 m x 3 m
  expectNear(regionAreaM2(halves?.below as Region), 47, 1e-12, 'm²'); // worked by hand: 56 - 9
});

test('a pocket of a hole can be closed off', () => {
  const cup = points([2, 2], [2, 8], [3, 8], [3, 3], [7, 3], [7, 8], [8, 8], [8, 2]);
  const ground = region(rect(0, 0, 10, 10), cup);
  // Chords from east to west: right of the cup, within it, left of it.
  const halves = splitAt(ground, 6, [1]);
  expectNear(regionAreaM2(halves?.below as Region), 12, 1e-12, 'm²'); // worked by hand: 4 m x 3 m in the cup
  expectNear(regionAreaM2(halves?.above as Region), 72, 1e-12, 'm²'); // worked by hand: 100 - 16 - 12
  expect(halves?.above.holes.length).toBe(1);
});

test('a chord from the edge to a hole parts nothing', () => {
  expect(splitAt(region(rect(0, 0, 10, 10), rect(4, 4, 2, 2)), 5, [0])).toBeUndefined();
});

test('a cut along an edge leaves no spike', () => {
  const ground = region(points([0, 0], [4, 0], [4, 4], [10, 4], [10, 8], [0, 8]));
  const halves = splitAt(ground, 4);
  expectNear(regionAreaM2(halves?.below as Region), 16, 1e-12, 'm²'); // worked by hand: 4 m x 4 m
  expect(halves?.below.outer.length).toBeLessThanOrEqual(5);
  expectNear(regionAreaM2(halves?.above as Region), 40, 1e-12, 'm²'); // worked by hand: 10 m x 4 m
});
