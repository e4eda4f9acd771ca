import { expect, test } from 'vitest';
import type { Caution } from '../../../core/products/index.ts';
import { boxInside, growBox, textBox } from '../../../core/sheet/drawing.ts';
import { notesPages } from '../../../core/sheet/notesPage.ts';
import { SMALL_SQUARE } from '../../support/handMadeYards.ts';
import { contextOf } from '../../support/sheetContexts.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

const CAUTIONS: readonly Caution[] = [
  { id: 'b', moment: 'after', text: 'Keep off until dry.', source: 'the label' },
  { id: 'a', moment: 'plan', text: 'The label governs.', source: 'the law' },
];

test('every caution is printed with who says so, in the order of the work', () => {
  const words = notesPages(contextOf(SMALL_SQUARE), CAUTIONS).flatMap((page) => textsOf(page.marks));
  const shown = words.filter((word) =>
    ['planning', 'The label governs.', 'the law', 'afterwards', 'Keep off until dry.', 'the label'].includes(
      word,
    ),
  );
  expect(shown).toEqual([
    'planning',
    'The label governs.',
    'the law',
    'afterwards',
    'Keep off until dry.',
    'the label',
  ]);
});

test('there is a line for date, weather and who did it', () => {
  const words = notesPages(contextOf(SMALL_SQUARE), CAUTIONS).flatMap((page) => textsOf(page.marks));
  for (const word of ['date', 'weather', 'wind', 'done by']) expect(words).toContain(word);
});

test('many cautions run on to a next page with nothing over the edge', () => {
  const many = Array.from(
    { length: 40 },
    (_, i): Caution => ({
      id: `${i}`,
      moment: 'spray',
      text: `Mind number ${i}. `.repeat(20).trim(),
      source: 's',
    }),
  );
  const pages = notesPages(contextOf(SMALL_SQUARE), many);
  expect(pages.length).toBeGreaterThan(1);
  for (const page of pages) {
    for (const mark of textMarksOf(page.marks))
      expect(boxInside(textBox(mark), growBox(page.paper.body, 0.01)), mark.text).toBe(true);
  }
});
