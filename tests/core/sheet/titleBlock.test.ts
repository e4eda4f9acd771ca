import { expect, test } from 'vitest';
import { boxInside, boxesOverlap, textBox } from '../../../core/sheet/drawing.ts';
import { drawHeader, drawTitleBlock } from '../../../core/sheet/titleBlock.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

const BOX = { xMm: 12, yMm: 12, widthMm: 186, heightMm: 14 };
const LONG = 'The walled garden and lower paddock behind the old rectory at Little Hampstead-under-Wychwood';

test('a header shortens what is too long instead of running its parts together', () => {
  const marks = textMarksOf(
    drawHeader(BOX, { title: 'Section A1', subtitle: LONG, right: [LONG, 'ground of 12 May 2026'] }),
  );
  const boxes = marks.map(textBox);
  boxes.forEach((box, i) => {
    for (const other of boxes.slice(i + 1)) expect(boxesOverlap(box, other)).toBe(false);
    expect(box.xMm + box.widthMm).toBeLessThanOrEqual(198 + 1e-9); // 12 + 186
  });
  expect(marks.filter((mark) => mark.text.endsWith('…'))).toHaveLength(2); // subtitle and yard name
});

test('a header without a subtitle has none', () => {
  expect(
    textsOf(drawHeader(BOX, { title: 'Notes', subtitle: '', right: ['7 Larkfield Lane', ''] })),
  ).not.toContain('…');
});

test('each cell of a title block keeps its label and entry inside its own width', () => {
  const cells = [
    { label: 'yard', entry: LONG, share: 2 },
    { label: 'page', entry: '1 of 9', share: 1 },
  ];
  const marks = textMarksOf(drawTitleBlock(BOX, cells));
  expect(marks.map((mark) => mark.text.replace(/…$/, ''))).toEqual([
    'yard',
    expect.stringMatching(/^The walled/),
    'page',
    '1 of 9',
  ]);
  const first = { ...BOX, widthMm: 124 }; // two thirds of 186
  for (const mark of marks.slice(0, 2)) expect(boxInside(textBox(mark), first)).toBe(true);
});
