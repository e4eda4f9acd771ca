import { expect, test } from 'vitest';
import { isOnMark, missCost, pointCost, tapeCost } from '../../../core/staking/ease.ts';
import { yardPoints } from '../../../core/staking/namedPoints.ts';
import { outline, rect } from '../../support/builders.ts';

test('a landmark comes before a corner of a wall, that before a corner of a lawn, that before a bend', () => {
  const { all } = yardPoints({
    outlines: [
      outline('building', 'house', rect(0, 0, 5, 5)),
      outline('zone', 'lawn', rect(9, 0, 5, 5)),
      outline('bed', 'bed', rect(9, 0, 0.4, 0.4)),
    ],
    marks: [{ id: 'm', kind: 'landmark', name: 'post', at: { xM: 0, yM: 9 } }],
  });
  const costs = [0, 1, 5, 9].map((i) => pointCost(all[i] as (typeof all)[number]));
  expect(costs).toEqual(costs.toSorted((a, b) => a - b));
  expect(new Set(costs).size).toBe(4);
});

test('a second pull of the tape costs more than the first', () => {
  expect(tapeCost(60) - tapeCost(30)).toBeGreaterThan(tapeCost(30));
});

test('only a way that misses by more than a person would mind costs for it', () => {
  expect(missCost({ xM: 0, yM: 0 }, { xM: 0.02, yM: 0 })).toBe(0);
  expect(missCost({ xM: 0, yM: 0 }, { xM: 0.04, yM: 0 })).toBeGreaterThan(10);
});

test('marks are half feet and tenths of a metre', () => {
  expect([3.3, 3.35].map((lengthM) => isOnMark(lengthM, 'metric'))).toEqual([true, false]);
  expect([18, 15].map((inches) => isOnMark(inches * 0.0254, 'us'))).toEqual([true, false]);
});
