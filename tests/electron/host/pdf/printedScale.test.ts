import { beforeAll, describe, expect, test } from 'vitest';
import type { PathMark, SheetPage } from '../../../../core/sheet/index.ts';
import { GROUND_INK } from '../../../../core/sheet/hatch.ts';
import { writePdf } from '../../../../electron/host/pdf/writePdf.ts';
import { expectNear } from '../../../support/expectNear.ts';
import { SMALL_SQUARE, THREE_ZONES } from '../../../support/handMadeYards.ts';
import { type RasterPage, rasterPage } from '../../../support/rasterPage.ts';
import { marksOf, sheetOf } from '../../../support/sheetPages.ts';

const DOTS_PER_INCH = 300;
const MM_PER_PX = 25.4 / DOTS_PER_INCH; // an inch is 25.4 mm

async function printed(pages: SheetPage[]): Promise<RasterPage> {
  const pdf = await writePdf(pages, {
    title: 'scale',
    madeAt: '2026-11-25T10:00:00Z',
    readImage: () => undefined,
  });
  if (!pdf.ok) throw new Error(JSON.stringify(pdf.problems));
  return rasterPage(pdf.value, 1, DOTS_PER_INCH);
}

function darkAt(page: RasterPage, xPx: number, yPx: number): boolean {
  return (page.grey[yPx * page.widthPx + xPx] ?? 255) < 160;
}

/** Centres of the runs of dark pixels along a row (or a column), in millimetres. */
function inkAlong(page: RasterPage, along: 'row' | 'column', atMm: number): number[] {
  const fixed = Math.round(atMm / MM_PER_PX);
  const length = along === 'row' ? page.widthPx : page.heightPx;
  const centres: number[] = [];
  let start = -1;
  for (let i = 0; i <= length; i++) {
    const dark = i < length && (along === 'row' ? darkAt(page, i, fixed) : darkAt(page, fixed, i));
    if (dark && start < 0) start = i;
    if (!dark && start >= 0) {
      centres.push(((start + i) / 2) * MM_PER_PX);
      start = -1;
    }
  }
  return centres;
}

/** The run nearest a place, within two millimetres of it. */
function inkNear(centres: readonly number[], expectedMm: number): number {
  const nearest = centres.reduce(
    (best, next) => (Math.abs(next - expectedMm) < Math.abs(best - expectedMm) ? next : best),
    Number.POSITIVE_INFINITY,
  );
  expectNear(nearest, expectedMm, 2, 'mm');
  return nearest;
}

describe('the printed scale, measured on the pixels of the page', () => {
  let page: RasterPage;
  let marks: PathMark[];

  beforeAll(async () => {
    const pages = sheetOf(SMALL_SQUARE);
    page = await printed(pages);
    marks = marksOf(pages[0]?.marks ?? []).filter((mark) => mark.kind === 'path');
  });

  test('the check line is 100 mm within 0.2 %', () => {
    // Its end ticks: 2 mm high, on the right end of the body; measured half way up.
    const line = marks.find((mark) => {
      const points = mark.subpaths[0]?.points ?? [];
      return (
        mark.subpaths.length === 1 &&
        points.length === 2 &&
        Math.abs(Math.abs((points[1]?.xMm ?? 0) - (points[0]?.xMm ?? 0)) - 100) < 1e-6
      );
    });
    const [left, right] = line?.subpaths[0]?.points ?? [];
    if (left === undefined || right === undefined) throw new Error('no check line');
    const ink = inkAlong(page, 'row', left.yMm - 1.5);
    expectNear(inkNear(ink, right.xMm) - inkNear(ink, left.xMm), 100, 0.2, 'mm'); // the length it states, 0.2 %
  });

  test('a zone edge of 10 m is as long as the scale says within 0.2 %, both ways', () => {
    const edge = marks.find((mark) => mark.stroke === GROUND_INK.zone.edge)?.subpaths[0]?.points ?? [];
    const xs = edge.map((point) => point.xMm);
    const ys = edge.map((point) => point.yMm);
    const [west, east] = [Math.min(...xs), Math.max(...xs)];
    const [north, south] = [Math.min(...ys), Math.max(...ys)];
    const expectedMm = 10_000 / 75; // 10 m at 1:75, the scale in the golden title block
    // The edge is dashed: of several rows and columns the ones that hit a dash on both sides are used.
    const across = measuredBetween(page, 'row', west, east, north + 3, south - 3);
    const down = measuredBetween(page, 'column', north, south, west + 3, east - 3);
    expect(Math.min(across.length, down.length)).toBeGreaterThan(3);
    for (const lengthMm of [...across, ...down]) expectNear(lengthMm, expectedMm, 0.002 * expectedMm, 'mm');
  });
});

function measuredBetween(
  page: RasterPage,
  along: 'row' | 'column',
  fromMm: number,
  toMm: number,
  firstMm: number,
  lastMm: number,
): number[] {
  const lengths: number[] = [];
  for (let atMm = firstMm; atMm < lastMm; atMm += 1.7) {
    const ink = inkAlong(page, along, atMm);
    const from = ink.filter((centre) => Math.abs(centre - fromMm) < 0.5);
    const to = ink.filter((centre) => Math.abs(centre - toMm) < 0.5);
    if (from.length === 1 && to.length === 1) lengths.push((to[0] as number) - (from[0] as number));
  }
  return lengths;
}

test('the raster of a page is the whole paper', async () => {
  const letter = await printed(sheetOf(THREE_ZONES));
  expect([letter.widthPx, letter.heightPx]).toEqual([2550, 3300]); // 8.5 × 11 in at 300 dots an inch
});
