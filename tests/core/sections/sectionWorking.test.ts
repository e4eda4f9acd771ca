import { expect, test } from 'vitest';
import { planSections } from '../../../core/sections/index.ts';
import {
  cutTable,
  sectionShownWords,
  sectionSlopeWords,
  sectionSumWords,
  sectionText,
  sectionWorking,
} from '../../../core/sections/sectionWorking.ts';
import type { CutLine, Section } from '../../../core/sections/section.ts';
import { SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const METRIC = { frame: { kind: 'loose' }, unitSystem: 'metric' } as const;
/** A lawn of 20 by 10 m with a bed of 2 by 2 in its western half, cut in two at 10 m. */
const WEST: Section = {
  id: 'A1',
  zoneId: 'z',
  zoneName: 'lawn',
  region: region(rect(0, 0, 10, 10), rect(4, 4, 2, 2)),
  areaM2: 96,
};
const CUT: CutLine = { from: { xM: 10, yM: 0 }, to: { xM: 10, yM: 10 }, between: ['A1', 'A2'], cut: 0 };
const ELSEWHERE: CutLine = { from: { xM: 15, yM: 0 }, to: { xM: 15, yM: 10 }, between: ['A2', 'A3'], cut: 0 };

test('a section is worked to its own area and knows which of its edges are cut lines', () => {
  const working = sectionWorking(WEST, [CUT, ELSEWHERE], METRIC, 1);
  expect(working.area).toBe(96); // 10 * 10 - 2 * 2
  expect(sectionSumWords(working)).toBe('edge 100.000 - hole 1 4.000 = 96.000 m²'); // as above
  // The rectangle's second and third corners are those at 10 m.
  expect(cutTable(working)).toEqual([
    ['cut line with', 'from', 'to', 'length m'],
    ['A2', 'corner 2', 'corner 3', '10.000'],
  ]);
  const text = sectionText(working, 96);
  expect(text).toContain('Working of section A1 of lawn');
  expect(text).toContain('Hole 1');
  expect(text).toContain('shown as 96.0 m²'); // as above
});

test('an end on another cut line has no corner here and is told by its place', () => {
  const short: CutLine = { from: { xM: 10, yM: 3 }, to: { xM: 10, yM: 10 }, between: ['B7', 'A1'], cut: 0 };
  expect(cutTable(sectionWorking(WEST, [short], METRIC, 1))[1]).toEqual([
    'B7', // on the other side
    '10.00 east, 3.00 north', // as above
    'corner 3', // the north-east one
    '7.000', // 10 - 3
  ]);
});

test('a figure rounded up or down for the sum says so', () => {
  const working = sectionWorking(WEST, [], METRIC, 1);
  expect(sectionShownWords(working, 96)).toBe('shown as 96.0 m²'); // its own area
  expect(sectionShownWords(working, 96.1)).toContain('not the nearest');
  expect(cutTable(working)).toEqual([]);
});

test('the sections of a planned lawn are worked to the areas the plan has, and every cut line is one of theirs', () => {
  const planned = planSections(
    {
      zoneId: 'z',
      zoneName: 'lawn',
      letter: 'A',
      treated: [region(rect(0, 0, 40, 25), rect(10, 5, 6, 9))],
    },
    { loadAreaM2: 220, policy: 'even', headingDeg: null, swathM: 2, markM: null },
  );
  if (!planned.ok) throw new Error('no sections');
  const { sections, cutLines } = planned.value;
  expect(cutLines.length).toBeGreaterThan(2); // 946 m² in loads of 220: five sections
  const workings = sections.map((section) =>
    sectionWorking(section, cutLines, { ...METRIC, unitSystem: 'us' }, 1),
  );
  workings.forEach(({ area }, i) => {
    expectNear(area * SQUARE_FOOT_M2, sections[i]?.areaM2 ?? Number.NaN, 1e-4, 'm²'); // corners shown to 1e-6 ft
  });
  // Each cut line stands between two sections.
  expect(workings.flatMap(({ cuts }) => cuts).length).toBe(2 * cutLines.length);
});

test('on a slope whose surface counts, map × factor = surface is said, and nothing on level ground', () => {
  const bank = sectionWorking(WEST, [], METRIC, 1.25);
  const words = 'its load is mixed for 96.000 × 1.250000 = 120.000 m² of surface, by the factor of its zone';
  expect(sectionSlopeWords(bank)).toEqual([words]); // 96 * 1.25
  expect(sectionText(bank, 96)).toContain(words);
  expect(sectionSlopeWords(sectionWorking(WEST, [], METRIC, 1))).toEqual([]);
});
