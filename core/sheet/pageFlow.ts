import { type PageBox, SOFT_INK, text } from './drawing.ts';
import { drawLedger, LEDGER_HEAD_MM, LEDGER_ROW_MM, type Ledger, ledgerHeightMm } from './ledger.ts';
import type { PageMark } from './page.ts';

/** Something that goes on a page: a titled table that may be split between rows, or a block that may not. */
export type FlowItem =
  | {
      readonly kind: 'ledger';
      readonly title: string;
      readonly note: string;
      readonly ledger: Ledger;
      /** Share of the page's width; a table of two figures is not drawn across all of it. */
      readonly widthShare?: number;
    }
  | { readonly kind: 'block'; readonly heightMm: number; readonly draw: (box: PageBox) => PageMark[] };

const HEADING_MM = 6;
const GAP_MM = 6;
/** A table is not begun at the foot of a page for fewer rows than this. */
const LEAST_ROWS = 3;

/** Lays items down one below the other, over as many pages of the same body as they need. */
export function flowOverPages(body: PageBox, items: readonly FlowItem[]): PageMark[][] {
  const pages: PageMark[][] = [[]];
  const foot = body.yMm + body.heightMm;
  let top = body.yMm;
  const turnPage = () => {
    pages.push([]);
    top = body.yMm;
  };
  const put = (marks: readonly PageMark[]) => (pages.at(-1) as PageMark[]).push(...marks);

  for (const item of items) {
    if (item.kind === 'block') {
      if (top + item.heightMm > foot && top > body.yMm) turnPage();
      put(item.draw({ ...body, yMm: top, heightMm: item.heightMm }));
      top += item.heightMm;
      continue;
    }
    let rows = item.ledger.rows;
    let heading = item.title;
    for (;;) {
      const rest = { ...item.ledger, rows };
      const roomMm = foot - top - HEADING_MM;
      const wholeFits = ledgerHeightMm(rest) <= roomMm;
      const fitting = Math.floor((roomMm - LEDGER_HEAD_MM - 1) / LEDGER_ROW_MM);
      if (!wholeFits && fitting < LEAST_ROWS && top > body.yMm) {
        turnPage();
        continue;
      }
      // The sum never stands alone on the next page: at least one row goes with it.
      const taken = wholeFits ? rows.length : Math.max(1, Math.min(fitting, rows.length - 1));
      const part: Ledger = { ...rest, rows: rows.slice(0, taken), sum: wholeFits ? item.ledger.sum : null };
      put(drawHeading(body, top, heading, item.note));
      put(drawLedger(body.xMm, top + HEADING_MM, body.widthMm * (item.widthShare ?? 1), part));
      top += HEADING_MM + ledgerHeightMm(part) + GAP_MM;
      rows = rows.slice(taken);
      if (wholeFits) break;
      heading = `${item.title}, continued`;
      turnPage();
    }
  }
  return pages;
}

export function drawHeading(body: PageBox, topMm: number, title: string, note: string): PageMark[] {
  const marks: PageMark[] = [text(body.xMm, topMm + 3.6, title, { sizeMm: 4, face: 'condensed-bold' })];
  if (note !== '') {
    marks.push(
      text(body.xMm + body.widthMm, topMm + 3.6, note, {
        sizeMm: 2.9,
        face: 'condensed',
        align: 'right',
        colour: SOFT_INK,
      }),
    );
  }
  return marks;
}
