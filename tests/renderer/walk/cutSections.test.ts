import { expect, test } from 'vitest';
import type { CutLine } from '../../../core/sections/index.ts';
import { pairsAlong, sectionsAlong } from '../../../renderer/walk/cutSections.ts';

const at = { xM: 0, yM: 0 };
const line = (cut: number, left: string, right: string): CutLine => {
  return { from: at, to: at, between: [left, right], cut };
};
const plan = {
  cutLines: [line(0, 'A3', 'A1'), line(0, 'A3', 'A2'), line(1, 'A1', 'A2'), line(2, 'A3', 'A1')],
};

test('a cut lies between the sections on its left and those on its right', () => {
  expect(sectionsAlong({ runs: [0] }, plan).replace(/[\u00a0\u2060]/g, ' ')).toBe('A3 |  A1, A2');
  expect(sectionsAlong({ runs: [7] }, plan)).toBe('nothing');
});

test('each pair it parts can be joined, and is named once though the cut has two runs', () => {
  expect(pairsAlong({ runs: [0, 2] }, plan)).toEqual([
    ['A1', 'A3'],
    ['A2', 'A3'],
  ]);
});
