import { expect, test } from 'vitest';
import { boxInside, textBox } from '../../../core/sheet/drawing.ts';
import { drawHeading, flowOverPages } from '../../../core/sheet/pageFlow.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

const BODY = { xMm: 12, yMm: 30, widthMm: 190, heightMm: 100 };
const COLUMNS = [{ title: 'row', share: 1, align: 'left' } as const];

function tableOf(rows: number) {
  const ledger = {
    columns: COLUMNS,
    rows: Array.from({ length: rows }, (_, i) => [`entry ${i + 1}`]),
    sum: ['sum'],
  };
  return { kind: 'ledger', title: 'Loads', note: '', ledger } as const;
}

test('every row of a long table is printed once, in order, and the sum once at the end', () => {
  const pages = flowOverPages(BODY, [tableOf(70)]);
  expect(pages.length).toBeGreaterThan(3); // 70 rows of 5.4 mm are 378 mm, a page body 100 mm
  const words = pages.flatMap(textsOf).filter((word) => word.startsWith('entry') || word === 'sum');
  expect(words).toEqual([...Array.from({ length: 70 }, (_, i) => `entry ${i + 1}`), 'sum']);
});

test('the sum never stands alone on a page', () => {
  for (let rows = 1; rows < 60; rows++) {
    const last = textsOf(flowOverPages(BODY, [tableOf(rows)]).at(-1) ?? []);
    expect(last.filter((word) => word.startsWith('entry')).length, `${rows} rows`).toBeGreaterThan(0);
  }
});

test('nothing flows out of the body', () => {
  for (const page of flowOverPages(BODY, [tableOf(5), tableOf(40), tableOf(3)])) {
    for (const mark of textMarksOf(page)) expect(boxInside(textBox(mark), BODY), mark.text).toBe(true);
  }
});

test('a block that does not fit goes to the next page whole', () => {
  const block = {
    kind: 'block',
    heightMm: 60,
    draw: (box: typeof BODY) => drawHeading(box, box.yMm, 'block', ''),
  } as const;
  const pages = flowOverPages(BODY, [block, block]);
  expect(pages.map(textsOf)).toEqual([['block'], ['block']]); // 2 × 60 mm are more than 100 mm
});
