import { expect, test } from 'vitest';
import { emptyYard } from '../../../../core/edits/index.ts';
import type { Outline, Yard } from '../../../../core/yard.ts';
import { leftBehindIn } from '../../../../electron/host/exporters/leftBehind.ts';
import { outline, rect } from '../../../support/builders.ts';

const LAWN = outline('zone', 'lawn', rect(0, 0, 20, 10));

function yardOf(outlines: readonly Outline[]): Yard {
  const yard = emptyYard('Test yard', { kind: 'loose' }, 'metric', '2026-11-25');
  return { ...yard, outlines };
}

test('a yard of straight corners alone is carried whole', () => {
  expect(leftBehindIn(yardOf([LAWN]))).toEqual([]);
});

test('strips along single edges are not dropped without a word; those all round are written', () => {
  const alongOne = {
    ...LAWN,
    outer: {
      kind: 'corners',
      corners: rect(0, 0, 20, 10).map((at, i) => (i === 0 ? { ...at, keepOffM: 2 } : at)),
    },
  } as const;
  expect(leftBehindIn(yardOf([{ ...LAWN, keepOffM: 3 }]))).toEqual([]);
  expect(leftBehindIn(yardOf([{ ...LAWN, keepOffM: 3 }, alongOne]))).toEqual([
    '1 outline’s strip along an edge',
  ]);
});

test('curves are said to be written as corners', () => {
  const pond: Outline = {
    ...LAWN,
    kind: 'water',
    outer: { kind: 'circle', centre: { xM: 5, yM: 5 }, radiusM: 2 },
  };
  expect(leftBehindIn(yardOf([LAWN, pond]))).toEqual(['the curves of 1 outline, written as corners']);
});
