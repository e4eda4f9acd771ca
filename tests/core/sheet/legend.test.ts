import { expect, test } from 'vitest';
import { drawLegend } from '../../../core/sheet/legend.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { NINE_SECTIONS, SMALL_SQUARE } from '../../support/handMadeYards.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

const PLAIN = {
  overlaps: [],
  strips: [],
  hasPlannedCuts: false,
  hasHeldCuts: false,
  hasStart: false,
  hasFinish: false,
  hasHose: false,
};
const WITH_CUTS = { ...PLAIN, hasPlannedCuts: true };

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

test('cuts the person holds are told from the plan’s own, and either stands there only when it is on the map', () => {
  const { yard } = handMadePlan(SMALL_SQUARE);
  const words = (ground: typeof PLAIN) => textsOf(drawLegend(10, 10, 180, yard, ground, '').marks).slice(2);
  expect(words(WITH_CUTS)).toEqual(['cut line, flag at each end']);
  expect(words({ ...PLAIN, hasHeldCuts: true })).toEqual(['cut line you hold in place']);
  expect(words({ ...WITH_CUTS, hasHeldCuts: true })).toHaveLength(2); // one of each
});

test('start and finish are explained where the person set them', () => {
  const { yard } = handMadePlan(SMALL_SQUARE);
  const ground = { ...PLAIN, hasStart: true, hasFinish: true };
  expect(textsOf(drawLegend(10, 10, 180, yard, ground, '').marks).slice(2)).toEqual(['start', 'finish']);
});
