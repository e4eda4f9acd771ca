import { expect, test } from 'vitest';
import { drawLegend } from '../../../core/sheet/legend.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { NINE_SECTIONS, SMALL_SQUARE } from '../../support/handMadeYards.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

const PLAIN = { overlaps: [], strips: [], hasCutLines: false, hasHose: false };
const WITH_CUTS = { ...PLAIN, hasCutLines: true };

test('a legend explains what is on the map and nothing else', () => {
  const { yard } = handMadePlan(SMALL_SQUARE);
  expect(textsOf(drawLegend(10, 10, 180, yard, PLAIN, '').marks)).toEqual([
    'treated turf',
    'pass, walked this way',
  ]);
});

test('a yard with every kind has every kind in its legend', () => {
  const { yard } = handMadePlan(NINE_SECTIONS);
  const words = textsOf(drawLegend(10, 10, 180, yard, WITH_CUTS, '').marks);
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
  const wide = drawLegend(10, 10, 180, yard, WITH_CUTS, '');
  const narrow = drawLegend(10, 10, 60, yard, WITH_CUTS, '');
  expect(narrow.heightMm).toBeGreaterThan(wide.heightMm);
  for (const mark of textMarksOf(narrow.marks)) expect(mark.at.xMm).toBeLessThan(70); // 10 + 60
});

test('a note is set where the last row has room and left out where it has not', () => {
  const { yard } = handMadePlan(SMALL_SQUARE);
  expect(textsOf(drawLegend(10, 10, 180, yard, PLAIN, 'see the section pages').marks)).toContain(
    'see the section pages',
  );
  expect(textsOf(drawLegend(10, 10, 75, yard, PLAIN, 'see the section pages').marks)).not.toContain(
    'see the section pages',
  );
});

test('strips kept off and ground in two zones are explained where there are any', () => {
  const { yard } = handMadePlan(SMALL_SQUARE);
  const strips = [{ outlineId: 'a', strips: [], regions: [] }];
  const overlaps = [{ ownerId: 'a', otherId: 'b', by: 'smaller', areaM2: 1, regions: [] }] as const;
  const words = textsOf(drawLegend(10, 10, 180, yard, { ...PLAIN, strips, overlaps }, '').marks);
  expect(words).toEqual(['treated turf', 'keep-off strip', 'in two zones', 'pass, walked this way']);
});
