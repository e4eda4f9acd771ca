import { expect, test } from 'vitest';
import { SECTIONS_TO_A_PAGE, sectionScale } from '../../../core/sheet/sectionGroupPage.ts';
import { contextOf } from '../../support/sheetContexts.ts';
import { MANY_SECTIONS } from '../../support/handMadeYards.ts';
import { sheetOf, textsOf } from '../../support/sheetPages.ts';

test('a section is drawn at the largest scale that leaves air round it', () => {
  const bounds = { minXM: 0, minYM: 0, maxXM: 5, maxYM: 20 };
  const box = { xMm: 0, yMm: 0, widthMm: 90, heightMm: 100 };
  // 20 m in 100 - 2 × 7 = 86 mm: 1:250 makes 80 mm, 1:200 100 mm
  expect(sectionScale(contextOf(MANY_SECTIONS), bounds, box, 7)).toBe(250);
});

test('ground too large for any scale is still drawn, at the smallest', () => {
  const bounds = { minXM: 0, minYM: 0, maxXM: 1e7, maxYM: 20 };
  expect(
    sectionScale(contextOf(MANY_SECTIONS), bounds, { xMm: 0, yMm: 0, widthMm: 90, heightMm: 90 }, 7),
  ).toBe(50_000); // last of the metric scales
});

test('every section of a grouped page carries its area and amount', () => {
  const group = sheetOf(MANY_SECTIONS).find(({ marks }) => textsOf(marks)[0]?.startsWith('Sections'));
  const captions = textsOf(group?.marks ?? []).filter((word) => word.endsWith(' mL'));
  expect(captions).toHaveLength(SECTIONS_TO_A_PAGE);
  for (const caption of captions) expect(caption).toBe('100.0 m², 95.0 mL'); // 5 m × 20 m at 0.95 mL/m²
});
