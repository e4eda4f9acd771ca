import { expect, test } from 'vitest';
import { drawLegend } from '../../../core/sheet/legend.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { NINE_SECTIONS, SMALL_SQUARE } from '../../support/handMadeYards.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

test('a legend explains what is on the map and nothing else', () => {
  const { yard } = handMadePlan(SMALL_SQUARE);
  expect(textsOf(drawLegend(10, 10, 180, yard, false, '').marks)).toEqual([
    'treated turf',
    'pass, walked this way',
  ]);
});

test('a yard with every kind has every kind in its legend', () => {
  const { yard } = handMadePlan(NINE_SECTIONS);
  const words = textsOf(drawLegend(10, 10, 180, yard, true, '').marks);
  for (const word of [
    'bed',
    'hardscape',
    'building',
    'water',
    'tree',
    'keep-off strip',
    'check plot',
    'spigot',
    'landmark',
  ]) {
    expect(words).toContain(word);
  }
  expect(words).toContain('cut line, flag at each end');
});

test('a narrow legend breaks into rows within its width', () => {
  const { yard } = handMadePlan(NINE_SECTIONS);
  const wide = drawLegend(10, 10, 180, yard, true, '');
  const narrow = drawLegend(10, 10, 60, yard, true, '');
  expect(narrow.heightMm).toBeGreaterThan(wide.heightMm);
  for (const mark of textMarksOf(narrow.marks)) expect(mark.at.xMm).toBeLessThan(70); // 10 + 60
});

test('a note is set where the last row has room and left out where it has not', () => {
  const { yard } = handMadePlan(SMALL_SQUARE);
  expect(textsOf(drawLegend(10, 10, 180, yard, false, 'see the section pages').marks)).toContain(
    'see the section pages',
  );
  expect(textsOf(drawLegend(10, 10, 75, yard, false, 'see the section pages').marks)).not.toContain(
    'see the section pages',
  );
});
