import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { type Face, shortenText, textWidthMm, wrapText } from '../../../core/sheet/measureText.ts';
import { fontFilesFor } from '../../../electron/host/pdf/fonts.ts';
import { expectNear } from '../../support/expectNear.ts';

const FACES: readonly Face[] = ['regular', 'bold', 'condensed', 'condensed-bold'];
const PT_PER_MM = 72 / 25.4; // 72 points to an inch of 25.4 mm, by definition

/** Width as the PDF library sets it, kerning and all. */
function setWidthMm(text: string, sizeMm: number, face: Face): number {
  const document = new PDFDocument({ autoFirstPage: false });
  const font = fontFilesFor(face)[0];
  if (font === undefined) throw new Error('no font');
  return (
    document
      .font(font.read())
      .fontSize(sizeMm * PT_PER_MM)
      .widthOfString(text) / PT_PER_MM
  );
}

describe('measured text', () => {
  for (const face of FACES) {
    test(`words in ${face} are within 2 % of what the PDF writer sets`, () => {
      for (const words of ['Back lawn', 'The walled garden, behind AVATAR Way', '7 Larkfield Lane']) {
        const set = setWidthMm(words, 3, face);
        expectNear(textWidthMm(words, 3, face), set, 0.02 * set, 'mm');
      }
    });

    test(`figures in ${face} are as the PDF writer sets them, each digit alike`, () => {
      const set = setWidthMm('1,068 ± 9', 3, face);
      expectNear(textWidthMm('1,068 ± 9', 3, face), set, 0.0001 * set, 'mm');
      expect(textWidthMm('1', 3, face)).toBe(textWidthMm('8', 3, face));
    });
  }

  test('Greek and Cyrillic in the condensed face are measured in the wide one that sets them', () => {
    expect(textWidthMm('Дуб', 3, 'condensed')).toBe(textWidthMm('Дуб', 3, 'regular'));
  });

  test('text that fits stays whole, and text that does not ends in an ellipsis within the width', () => {
    const name = 'Lower paddock between the old wall and the lime avenue';
    expect(shortenText(name, 3, 'condensed', 500)).toBe(name);
    for (const widthMm of [40, 20, 10, 5]) {
      const short = shortenText(name, 3, 'condensed', widthMm);
      expect(short.endsWith('…')).toBe(true);
      expect(textWidthMm(short, 3, 'condensed')).toBeLessThanOrEqual(widthMm);
    }
    expect(shortenText(name, 3, 'condensed', 0.1)).toBe('');
  });

  test('wrapped text keeps every word in order and no line is too wide', () => {
    const words = 'Not before or during heavy rain, nor on soaked or frozen ground.';
    const lines = wrapText(words, 3, 'regular', 30);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join(' ')).toBe(words);
    for (const line of lines) expect(textWidthMm(line, 3, 'regular')).toBeLessThanOrEqual(30);
  });
});
