import { expect, test } from 'vitest';
import { edgeWays } from '../../../core/staking/edgeWays.ts';
import { yardPoints } from '../../../core/staking/namedPoints.ts';
import type { Way } from '../../../core/staking/setting.ts';
import { straightSides } from '../../../core/staking/straightSides.ts';
import { tapeWalls } from '../../../core/staking/tapeWalls.ts';
import type { Outline } from '../../../core/yard.ts';
import { outline, rect } from '../../support/builders.ts';

function waysTo(xM: number, yM: number, outlines: readonly Outline[]): readonly Way[] {
  const sides = straightSides(outlines, yardPoints({ outlines, marks: [] }));
  return edgeWays({ xM, yM }, sides, 'metric', tapeWalls(outlines)).toSorted((a, b) => a.cost - b.cost);
}

function wordsOf(way: Way | undefined) {
  if (way?.setting.kind !== 'edge') return undefined;
  const { corner, towards, alongM, off } = way.setting;
  return [corner.own, towards.own, alongM.toFixed(2), off && `${off.byM.toFixed(2)} ${off.side}`];
}

const lawn = outline('zone', 'lawn', rect(0, 0, 20, 10));

test('a flag on an edge is taped from the nearer corner', () => {
  const [first, second, ...rest] = waysTo(6, 0, [lawn]);
  expect(wordsOf(first)).toEqual(['SW corner', 'SE corner', '6.00', null]);
  expect(wordsOf(second)).toEqual(['SE corner', 'SW corner', '14.00', null]);
  expect(rest).toEqual([]);
});

test('a corner whose distance is a mark comes before a nearer one', () => {
  expect(wordsOf(waysTo(6.03, 0, [outline('zone', 'lawn', rect(0, 0, 20.03, 10))])[0])?.slice(0, 3)).toEqual([
    'SE corner',
    'SW corner',
    '14.00',
  ]);
});

test('the far edge of a strip is square in from a zone and square out from a bed', () => {
  const kept = { ...lawn, keepOffM: 0.6 };
  expect(wordsOf(waysTo(6, 0.6, [kept])[0])).toEqual(['SW corner', 'SE corner', '6.00', '0.60 in']);
  const bed = { ...outline('bed', 'bed', rect(30, 0, 5, 5)), keepOffM: 0.6 };
  const [south] = waysTo(31, -0.6, [bed]);
  expect(wordsOf(south)).toEqual(['SW corner', 'SE corner', '1.00', '0.60 out']);
  expect(south?.asSet).toEqual({ xM: 31, yM: -0.6 });
  const [north] = waysTo(31, 5.6, [bed]);
  expect(north?.asSet.yM).toBeCloseTo(5.6, 9); // 5 + 0.6
});

test('a place far off every side, and one past its end, has no way along it', () => {
  expect(waysTo(6, 4, [lawn])).toEqual([]);
  expect(waysTo(22, 0, [lawn])).toEqual([]);
});

test('a tape along an edge that runs through a house is the last way', () => {
  const house = outline('building', 'house', rect(1, -2, 3, 4));
  const ways = waysTo(6, 0, [lawn, house]);
  expect(wordsOf(ways[0])?.[0]).toBe('SE corner');
  expect((ways.at(-1)?.cost ?? 0) - (ways[0]?.cost ?? 0)).toBeGreaterThan(100);
});
