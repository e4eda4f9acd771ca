import { expect, test } from 'vitest';
import { flagPlaces } from '../../../core/staking/flagPlaces.ts';
import type { Cut, CutLine } from '../../../core/sections/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';

const at = (xM: number, yM: number): YardPoint => ({ xM, yM });
const cut = (from: YardPoint, to: YardPoint): Cut => ({ zoneId: 'z', from, to, heldId: null });
const part = (from: YardPoint, to: YardPoint, of: number): CutLine => {
  return { from, to, between: ['A1', 'A2'], cut: of };
};

test('ends that coincide share a flag, and one that rests on a line comes after that line’s own', () => {
  const long = cut(at(0, 5), at(20, 5));
  const short = cut(at(8, 5), at(8, 10));
  // The short one first: what it rests on is flagged before it all the same.
  const places = flagPlaces(
    [short, long],
    [part(at(8, 5), at(8, 10), 0), part(at(0, 5), at(8, 5.001), 1), part(at(8, 5), at(20, 5), 1)],
  );
  expect(places.map((place) => place.at)).toEqual([at(0, 5), at(20, 5), at(8, 5), at(8, 10)]);
  expect(places[2]?.rows).toEqual([0, 1]);
});

test('the runs of one line over a bed are one row, flagged from outside in', () => {
  const runs = [cut(at(0, 5), at(8, 5)), cut(at(11, 5), at(20, 5))];
  const places = flagPlaces(
    runs,
    runs.map(({ from, to }, i) => part(from, to, i)),
  );
  expect(places.map((place) => place.at.xM)).toEqual([0, 20, 8, 11]); // the middle of the row is x = 10
  expect(places.every(({ rows }) => rows.length === 1 && rows[0] === 0)).toBe(true);
});

test('a line that ends in open ground is flagged all the same', () => {
  const places = flagPlaces([], [part(at(1, 1), at(2, 2), 0)]);
  expect(places).toHaveLength(2);
});
