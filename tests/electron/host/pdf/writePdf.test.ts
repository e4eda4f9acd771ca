import { encode } from 'fast-png';
import { beforeAll, describe, expect, test } from 'vitest';
import type { PictureMark, SheetPage } from '../../../../core/sheet/index.ts';
import { at, INK, line, pen, text } from '../../../../core/sheet/drawing.ts';
import { writePdf } from '../../../../electron/host/pdf/writePdf.ts';
import { expectNear } from '../../../support/expectNear.ts';
import { LONG_NAMES, NINE_SECTIONS, THREE_ZONES } from '../../../support/handMadeYards.ts';
import { pdfInfo, pdfText, rasterPage } from '../../../support/rasterPage.ts';
import { sheetOf } from '../../../support/sheetPages.ts';

const ASK = { title: '7 Larkfield Lane', madeAt: '2026-11-25T10:00:00Z', readImage: () => undefined };

async function bytesOf(
  pages: readonly SheetPage[],
  ask: Partial<Parameters<typeof writePdf>[1]> = {},
): Promise<Uint8Array> {
  const pdf = await writePdf(pages, { ...ASK, ...ask });
  if (!pdf.ok) throw new Error(JSON.stringify(pdf.problems));
  return pdf.value;
}

/** Half red, half transparent, 4 by 2 pixels. */
const PICTURE = {
  mediaType: 'image/png',
  bytes: encode({
    width: 4,
    height: 2,
    channels: 4,
    depth: 8,
    data: Uint8Array.from({ length: 32 }, (_, i) => (i % 4 === 0 || (i % 4 === 3 && i % 16 < 8) ? 255 : 0)),
  }),
};

function pageWith(...marks: SheetPage['marks'][number][]): SheetPage {
  return { widthMm: 210, heightMm: 297, marks };
}

describe('the same input gives the same bytes', () => {
  test('for a whole sheet', async () => {
    const pages = sheetOf(THREE_ZONES);
    expect(await bytesOf(pages)).toEqual(await bytesOf(pages));
  });

  test('for a page with a transparent picture', async () => {
    const picture: PictureMark = {
      kind: 'picture',
      imageHash: 'ab',
      corners: [at(10, 10), at(90, 20), at(5, 60)],
      opacity: 0.4,
    };
    const readImage = () => PICTURE;
    expect(await bytesOf([pageWith(picture)], { readImage })).toEqual(
      await bytesOf([pageWith(picture)], { readImage }),
    );
  });

  test('and another date gives other bytes', async () => {
    expect(await bytesOf([pageWith()])).not.toEqual(
      await bytesOf([pageWith()], { madeAt: '2026-11-26T10:00:00Z' }),
    );
  });
});

describe('what another program reads in it', () => {
  test('Letter pages are 612 by 792 points, A4 pages 595.276 by 841.89', async () => {
    // 8.5 and 11 in of 72 points
    expect(pdfInfo(await bytesOf(sheetOf(THREE_ZONES)), 1)).toMatch(
      /Page +1 MediaBox: +0\.00 +0\.00 +612\.00 +792\.00/,
    );
    // 210 and 297 mm × 72 / 25.4 = 595.2756 and 841.8898
    expect(pdfInfo(await bytesOf([pageWith()]), 1)).toMatch(
      /Page +1 MediaBox: +0\.00 +0\.00 +595\.28 +841\.89/,
    );
  });

  test('title and date are those given', async () => {
    const info = pdfInfo(await bytesOf([pageWith()]), 1);
    expect(info).toMatch(/Title: +7 Larkfield Lane/);
    expect(info).toMatch(/CreationDate: +2026-11-25T10:00:00Z/);
  });

  describe('loads and areas', () => {
    let pages: string[];
    beforeAll(async () => {
      pages = pdfText(await bytesOf(sheetOf(NINE_SECTIONS)));
    });

    test('every page says which of how many it is', () => {
      pages.forEach((words, i) => {
        expect(words).toContain(`${i + 1} of ${pages.length}`);
      });
    });

    test('the printed loads add up to the printed total, to the last digit', () => {
      const mix = pages.find((words) => /^Mix\b/m.test(words)) ?? '';
      const loads = [...mix.matchAll(/^ *(\d+) +(A\d) +Back lawn +([\d,]+) +([\d.]+) +([\d.]+) /gm)];
      const total = /^ *all +([\d,]+) +([\d.]+) +([\d.]+)/m.exec(mix);
      expect(loads).toHaveLength(9); // sections in the fixture
      [3, 4, 5].forEach((column, i) => {
        const digits = (words: string) => Math.round(Number(words.replaceAll(',', '')) * 100);
        const sum = loads.reduce((whole, load) => whole + digits(load[column] ?? ''), 0);
        expect(sum).toBe(digits(total?.[i + 1] ?? ''));
      });
    });
  });

  test('names beyond the Latin alphabet are set, and what no font has is a question mark', async () => {
    const words = pdfText(await bytesOf(sheetOf(LONG_NAMES))).join('\n');
    for (const name of ['Дуб у ворот', 'Łąka przy']) expect(words).toContain(name);
    const odd = pageWith(text(20, 20, 'path 芝 garden', { sizeMm: 5, face: 'condensed' }));
    expect(pdfText(await bytesOf([odd])).join('')).toMatch(/path ?\? ?garden/);
  });
});

describe('a picture', () => {
  const mark: PictureMark = {
    kind: 'picture',
    imageHash: 'ab',
    corners: [at(20, 30), at(120, 30), at(20, 80)],
    opacity: 0.5,
  };

  test('lies on its corners with its opacity', async () => {
    const page = rasterPage(await bytesOf([pageWith(mark)], { readImage: () => PICTURE }), 1, 72);
    const greyAt = (xMm: number, yMm: number) =>
      page.grey[Math.round((yMm * 72) / 25.4) * page.widthPx + Math.round((xMm * 72) / 25.4)] ?? -1;
    // Red of luma 0.299 at half strength over white: 255 (0.5 + 0.5 × 0.299) = 166; poppler's grey, to a few steps
    expectNear(greyAt(45, 55), 166, 12, 'grey');
    expect(greyAt(95, 55)).toBe(255); // the transparent half
    expect(greyAt(15, 55)).toBe(255); // left of the picture
    expect(greyAt(45, 85)).toBe(255); // below it
  });

  test('that is gone, of another kind or broken is named as a problem', async () => {
    const kindOf = async (readImage: Parameters<typeof writePdf>[1]['readImage']) => {
      const pdf = await writePdf([pageWith(mark)], { ...ASK, readImage });
      return pdf.ok ? null : [pdf.problems[0].kind, pdf.problems[0].where];
    };
    const where = { fileName: 'ab' };
    expect(await kindOf(() => undefined)).toEqual(['file/not-found', where]);
    expect(await kindOf(() => ({ ...PICTURE, mediaType: 'image/webp' }))).toEqual([
      'file/unknown-kind',
      where,
    ]);
    expect(await kindOf(() => ({ mediaType: 'image/png', bytes: new Uint8Array([1, 2, 3]) }))).toEqual([
      'file/unreadable',
      where,
    ]);
  });
});

test('a date that is none is refused', async () => {
  const pdf = await writePdf([pageWith()], { ...ASK, madeAt: 'yesterday' });
  expect(pdf.ok ? null : pdf.problems).toEqual([
    { kind: 'value/not-a-date', where: { field: 'madeAt' }, facts: { typed: 'yesterday' } },
  ]);
});

test('what is clipped does not show outside its clip', async () => {
  const bar = line([at(0, 50), at(210, 50)], pen(INK, 4));
  const subpaths = [{ points: [at(50, 0), at(100, 0), at(100, 297), at(50, 297)], closed: true }];
  const page = rasterPage(await bytesOf([pageWith({ kind: 'clip', subpaths, marks: [bar] })]), 1, 72);
  const row = Math.round((50 * 72) / 25.4) * page.widthPx;
  const dark = [...page.grey.subarray(row, row + page.widthPx)].flatMap((grey, i) => (grey < 128 ? [i] : []));
  expectNear((dark[0] ?? 0) / 72, 50 / 25.4, 1 / 72, 'in'); // the clip's left edge, to a pixel
  expectNear(((dark.at(-1) ?? 0) + 1) / 72, 100 / 25.4, 1 / 72, 'in'); // its right edge
});
