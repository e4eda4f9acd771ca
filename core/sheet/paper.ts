import type { PageBox } from './drawing.ts';

export type Paper = 'letter' | 'a4';
export type Orientation = 'portrait' | 'landscape';

/** Letter is 8.5 by 11 in, exactly 215.9 by 279.4 mm; A4 by ISO 216. */
const PORTRAIT_MM: Readonly<Record<Paper, readonly [number, number]>> = {
  letter: [215.9, 279.4],
  a4: [210, 297],
};

/** Wide enough for any office printer and for a clip on the board. */
const MARGIN_MM = 12;
const HEADER_MM = 14;
const TITLE_BLOCK_MM = 12.5;
const GAP_MM = 4;

/** The fixed parts of a page: everything is drawn inside `margins`; the page's own matter in `body`. */
export interface PaperPlan {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly margins: PageBox;
  readonly header: PageBox;
  readonly body: PageBox;
  readonly titleBlock: PageBox;
}

export function paperPlan(paper: Paper, orientation: Orientation): PaperPlan {
  const [short, long] = PORTRAIT_MM[paper];
  const widthMm = orientation === 'portrait' ? short : long;
  const heightMm = orientation === 'portrait' ? long : short;
  const margins = {
    xMm: MARGIN_MM,
    yMm: MARGIN_MM,
    widthMm: widthMm - 2 * MARGIN_MM,
    heightMm: heightMm - 2 * MARGIN_MM,
  };
  const header = { ...margins, heightMm: HEADER_MM };
  const titleTop = margins.yMm + margins.heightMm - TITLE_BLOCK_MM;
  const titleBlock = { ...margins, yMm: titleTop, heightMm: TITLE_BLOCK_MM };
  const top = margins.yMm + HEADER_MM + GAP_MM;
  const body = { ...margins, yMm: top, heightMm: titleTop - GAP_MM - top };
  return { widthMm, heightMm, margins, header, body, titleBlock };
}
