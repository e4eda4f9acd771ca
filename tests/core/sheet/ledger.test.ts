import { expect, test } from 'vitest';
import { boxesOverlap, textBox } from '../../../core/sheet/drawing.ts';
import { drawLedger, type Ledger, ledgerHeightMm, withoutColumns } from '../../../core/sheet/ledger.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

const LEDGER: Ledger = {
  columns: [
    { title: 'zone', share: 2, align: 'left' },
    { title: 'treated', share: 1, align: 'right' },
  ],
  rows: [
    ['Back lawn', { entry: '3,879', soft: '± 35' }],
    ['The walled garden and lower paddock behind the old rectory', '12'],
  ],
  sum: ['all', '3,891'],
};

test('a ledger has its heads, its rows and its sum', () => {
  const words = textsOf(drawLedger(10, 10, 60, LEDGER));
  expect(words.slice(0, 5)).toEqual(['zone', 'treated', 'Back lawn', '3,879', '± 35']); // heads, then the first row
  expect(words.slice(-2)).toEqual(['all', '3,891']); // the sum last
});

test('entries end at the column edge, one below the other, and long ones are shortened', () => {
  const marks = textMarksOf(drawLedger(10, 10, 60, LEDGER));
  const boxes = marks.map(textBox);
  boxes.forEach((box, i) => {
    expect(box.xMm).toBeGreaterThanOrEqual(10);
    expect(box.xMm + box.widthMm).toBeLessThanOrEqual(70); // 10 + 60
    for (const other of boxes.slice(i + 1)) expect(boxesOverlap(box, other)).toBe(false);
  });
  expect(marks.some((mark) => mark.text.endsWith('…'))).toBe(true);
});

test('a figure is never cut short while another column has room, however small its share', () => {
  const ledger: Ledger = {
    columns: [
      { title: 'what', share: 9, align: 'left' },
      { title: 'ft', share: 1, align: 'right' },
    ],
    rows: [
      ['lane', '1,234.5'],
      ['The walled garden and lower paddock behind the old rectory', '7.0'],
    ],
    sum: null,
  };
  const words = textsOf(drawLedger(10, 10, 40, ledger));
  expect(words).toContain('1,234.5');
  expect(words.some((word) => word.startsWith('The walled') && word.endsWith('…'))).toBe(true); // the name gives way
});

test('a sum is ruled single above and double below', () => {
  const heavy = (ledger: Ledger) =>
    drawLedger(10, 10, 60, ledger).filter((mark) => mark.kind === 'path' && mark.stroke?.widthMm === 0.25)
      .length;
  expect(heavy(LEDGER) - heavy({ ...LEDGER, sum: null })).toBe(3); // one rule above, two below
});

test('a ledger is no taller than it says', () => {
  const ys = drawLedger(0, 0, 60, LEDGER).flatMap((mark) =>
    mark.kind === 'path' ? mark.subpaths.flatMap((subpath) => subpath.points.map((point) => point.yMm)) : [],
  );
  expect(Math.max(...ys)).toBeLessThanOrEqual(ledgerHeightMm(LEDGER));
});

test('a table without some of its columns keeps the others in order, in its sum too', () => {
  const ledger: Ledger = {
    columns: ['load', 'product', 'time'].map((title) => ({ title, share: 1, align: 'left' })),
    rows: [['1', '3 fl oz', '1:00']],
    sum: ['all', '3 fl oz', '1:00'],
  };
  const left = withoutColumns(ledger, [1]);
  expect(left.columns.map(({ title }) => title)).toEqual(['load', 'time']);
  expect([left.rows, left.sum]).toEqual([[['1', '1:00']], ['all', '1:00']]);
});
