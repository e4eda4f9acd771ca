import PDFDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { at, INK, line, pen, shape, text } from '../../../../core/sheet/drawing.ts';
import type { PageMark } from '../../../../core/sheet/index.ts';
import { drawMarks, PT_PER_MM } from '../../../../electron/host/pdf/drawMarks.ts';

/** The drawing operators of one page, uncompressed. */
async function operatorsOf(...marks: PageMark[]): Promise<string> {
  const document = new PDFDocument({ size: [200, 200], margin: 0, compress: false });
  const chunks: Buffer[] = [];
  const done = new Promise<string>((resolve) => {
    document.on('data', (chunk: Buffer) => chunks.push(chunk));
    document.on('end', () => resolve(Buffer.concat(chunks).toString('latin1')));
  });
  expect(drawMarks(document, marks, new Map())).toBeUndefined();
  document.end();
  return done;
}

test('a millimetre is 72 / 25.4 points', () => {
  expect(PT_PER_MM * 25.4).toBeCloseTo(72, 12); // points in an inch
});

test('a line of 25.4 mm is 72 points long, in its own pen and dash', async () => {
  const operators = await operatorsOf(line([at(0, 0), at(25.4, 0)], pen(INK, 25.4 / 72, [25.4, 12.7])));
  expect(operators).toContain('0 0 m\n72 0 l');
  expect(operators).toMatch(/\n1 w\n/); // 25.4 / 72 mm is one point
  expect(operators).toContain('[72 36] 0 d'); // 25.4 and 12.7 mm
});

test('holes are left open by the even-odd rule, filled and stroked at once', async () => {
  const square = (size: number) => ({
    points: [at(0, 0), at(size, 0), at(size, size), at(0, size)],
    closed: true,
  });
  expect(await operatorsOf(shape([square(10), square(5)], INK, pen(INK, 0.2)))).toContain('B*');
  expect(await operatorsOf(shape([square(10), square(5)], INK, null))).toContain('f*');
});

test('a dash does not carry over to the next line', async () => {
  const operators = await operatorsOf(
    line([at(0, 0), at(9, 0)], pen(INK, 0.2, [1, 1])),
    line([at(0, 5), at(9, 5)], pen(INK, 0.2)),
  );
  expect(operators.lastIndexOf('[] 0 d')).toBeGreaterThan(operators.indexOf('[2.83'));
});

test('a mark with neither fill nor stroke leaves nothing behind', async () => {
  expect(
    await operatorsOf(shape([{ points: [at(0, 0), at(9, 9)], closed: false }], null, null)),
  ).not.toContain(' l\n');
});

test('turned text is turned about its own point', async () => {
  const operators = await operatorsOf(text(25.4, 25.4, 'A', { sizeMm: 5, face: 'regular', turnDeg: 90 }));
  // a quarter turn clockwise about (72, 72): x' = 144 - y, y' = x
  expect(operators).toMatch(/0 1 -1 0 144 0 cm/);
});

test('a picture whose bytes are not there is named', () => {
  const document = new PDFDocument({ autoFirstPage: false });
  document.addPage();
  const mark: PageMark = {
    kind: 'picture',
    imageHash: 'ab',
    corners: [at(0, 0), at(1, 0), at(0, 1)],
    opacity: 1,
  };
  expect(drawMarks(document, [mark], new Map())?.imageHash).toBe('ab');
});
