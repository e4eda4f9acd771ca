import { expect, test } from 'vitest';
import type { Cut, CutLine } from '../../../core/sections/index.ts';
import { stakeCuts } from '../../../core/staking/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import type { Outline } from '../../../core/yard.ts';
import { outline, rect } from '../../support/builders.ts';

function staked(outlines: readonly Outline[], lines: readonly (readonly [YardPoint, YardPoint])[]) {
  const cuts = lines.map(([from, to]): Cut => ({ zoneId: 'lawn', from, to, heldId: null }));
  const cutLines = cuts.map(({ from, to }, cut): CutLine => ({ from, to, between: ['A1', 'A2'], cut }));
  return stakeCuts({ outlines, marks: [] }, { cuts, cutLines }, 'metric');
}

const at = (xM: number, yM: number): YardPoint => ({ xM, yM });
const lawn = outline('zone', 'lawn', rect(0, 0, 20, 10));

test('an end on a straight edge is set along it, one on another cut along that', () => {
  const { flags, lines } = staked(
    [lawn],
    [
      [at(0, 4), at(20, 4)],
      [at(8, 4), at(8, 10)],
    ],
  );
  expect(flags.map(({ letter, setting }) => [letter, setting.kind])).toEqual([
    ['a', 'edge'],
    ['b', 'edge'],
    ['c', 'line'],
    ['d', 'edge'],
  ]);
  expect(lines.map((line) => line.flags.map(({ letter }) => letter))).toEqual([
    ['a', 'b'],
    ['c', 'd'],
  ]);
  expect(lines[1]?.lengthM).toBeCloseTo(6, 9); // from y = 4 to y = 10
});

test('an end on a curve is set by two tapes', () => {
  const round: Outline = {
    ...lawn,
    outer: { kind: 'circle', centre: at(0, 0), radiusM: 8 },
  };
  const house = outline('building', 'house', rect(10, -4, 6, 8));
  const { flags } = staked([round, house], [[at(0, -8), at(0, 8)]]);
  expect(flags.map(({ setting }) => setting.kind)).toEqual(['tapes', 'tapes']);
});

test('a plan without cuts has no flags', () => {
  expect(staked([lawn], [])).toEqual({ flags: [], lines: [] });
});
