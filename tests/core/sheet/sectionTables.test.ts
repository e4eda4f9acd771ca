import { expect, test } from 'vitest';
import { boxInside, textBox } from '../../../core/sheet/drawing.ts';
import { drawSectionTables, tablesHeightMm } from '../../../core/sheet/sectionTables.ts';
import { formatLength } from '../../../core/units/index.ts';
import { NINE_SECTIONS, SMALL_SQUARE } from '../../support/handMadeYards.ts';
import { contextOf } from '../../support/sheetContexts.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

const BELOW = { xMm: 12, yMm: 200, widthMm: 186, heightMm: 70 };
const BESIDE = { xMm: 124, yMm: 50, widthMm: 74, heightMm: 200 };

test('tables stay in their box, below a map as beside it', () => {
  const context = contextOf(NINE_SECTIONS);
  for (const load of context.figures.loads) {
    for (const [box, beside] of [
      [BELOW, false],
      [BESIDE, true],
    ] as const) {
      for (const mark of textMarksOf(drawSectionTables(context, load, box, beside))) {
        expect(boxInside(textBox(mark), box), `${load.section.id}: ${mark.text}`).toBe(true);
      }
    }
  }
});

test('a page with room left over has lines to write on', () => {
  const context = contextOf(SMALL_SQUARE);
  const load = context.figures.loads[0];
  if (load === undefined) throw new Error('no load');
  expect(textsOf(drawSectionTables(context, load, BESIDE, true))).toContain('seen on the way');
  expect(textsOf(drawSectionTables(context, load, { ...BESIDE, heightMm: 50 }, true))).not.toContain(
    'seen on the way',
  );
});

test('tables never ask for more than two fifths of the page', () => {
  const context = contextOf(NINE_SECTIONS);
  for (const section of context.plan.ground.sections) {
    expect(tablesHeightMm(context, section, 200)).toBeLessThanOrEqual(80); // 0.4 × 200
  }
});

test('flags that do not fit are left to the page of flags, and it says so', () => {
  const context = contextOf(NINE_SECTIONS);
  const load = context.figures.loads[1];
  if (load === undefined) throw new Error('no load');
  const words = textsOf(drawSectionTables(context, load, { ...BELOW, heightMm: 25 }, false));
  expect(words).toContain('more on the page of flags');
  expect(words).not.toContain('Lines');
  const roomy = textsOf(drawSectionTables(context, load, BESIDE, true));
  expect(roomy).toContain('Lines');
});

test('beside the passes stands how far inside an edge its pass is walked: half a swath', () => {
  const context = contextOf(SMALL_SQUARE);
  const load = context.figures.loads[0];
  if (load === undefined) throw new Error('no load');
  const { swathM } = context.plan.ground.request;
  const half = formatLength(swathM / 2, context.units); // half a swath, by definition of a perimeter pass
  const note = textsOf(drawSectionTables(context, load, BESIDE, true)).find((words) =>
    words.startsWith('swath'),
  );
  expect(note).toBe(`swath ${formatLength(swathM, context.units)}: walk ${half} inside an edge`);
});
