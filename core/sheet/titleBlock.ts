import {
  at,
  boxOutline,
  COLUMN_RULE,
  INK,
  line,
  type PageBox,
  pen,
  shape,
  SOFT_INK,
  text,
} from './drawing.ts';
import { shortenText, textWidthMm } from './measureText.ts';
import type { PageMark } from './page.ts';

/** What stands at the head of a page: its title, and what it belongs to at the right. */
export interface HeaderWords {
  readonly title: string;
  readonly subtitle: string;
  readonly right: readonly [string, string];
}

const TITLE_MM = 6.4;
const SMALL_MM = 2.9;

export function drawHeader(box: PageBox, words: HeaderWords): PageMark[] {
  const foot = box.yMm + box.heightMm;
  const right = box.xMm + box.widthMm;
  const sideMm = box.widthMm * 0.36;
  const side = words.right.map((part) => shortenText(part, SMALL_MM, 'condensed', sideMm));
  const takenMm = Math.max(...side.map((part) => textWidthMm(part, SMALL_MM, 'condensed')));
  const titleRoomMm = box.widthMm - takenMm - 6;
  const title = shortenText(words.title, TITLE_MM, 'condensed-bold', titleRoomMm);
  const titleMm = textWidthMm(title, TITLE_MM, 'condensed-bold');
  const subtitle = shortenText(words.subtitle, 4, 'condensed', titleRoomMm - titleMm - 3);
  const soft = { sizeMm: SMALL_MM, face: 'condensed', align: 'right', colour: SOFT_INK } as const;
  const marks: PageMark[] = [
    text(box.xMm, foot - 3.6, title, { sizeMm: TITLE_MM, face: 'condensed-bold' }),
    text(right, foot - 7.4, side[0] as string, soft),
    text(right, foot - 3.6, side[1] as string, soft),
    line([at(box.xMm, foot), at(right, foot)], pen(INK, 0.55)),
  ];
  if (subtitle !== '') {
    marks.push(
      text(box.xMm + titleMm + 3, foot - 3.6, subtitle, { sizeMm: 4, face: 'condensed', colour: SOFT_INK }),
    );
  }
  return marks;
}

/** A cell of the title block: a small word over the entry; `share` of the width. */
export interface TitleCell {
  readonly label: string;
  readonly entry: string;
  readonly share: number;
}

/** The ruled box at the foot of every page, as on a surveyor's drawing. */
export function drawTitleBlock(box: PageBox, cells: readonly TitleCell[]): PageMark[] {
  const marks: PageMark[] = [];
  const shares = cells.reduce((sum, cell) => sum + cell.share, 0);
  const foot = box.yMm + box.heightMm;
  const padMm = 2;
  let left = box.xMm;
  for (const cell of cells) {
    const widthMm = (box.widthMm * cell.share) / shares;
    const entryMm = 3.4;
    const roomMm = widthMm - 2 * padMm;
    if (left > box.xMm) marks.push(line([at(left, box.yMm), at(left, foot)], pen(COLUMN_RULE, 0.2)));
    marks.push(
      text(left + padMm, box.yMm + 4.1, cell.label, { sizeMm: 2.4, face: 'condensed', colour: SOFT_INK }),
      text(left + padMm, box.yMm + 9.4, shortenText(cell.entry, entryMm, 'condensed-bold', roomMm), {
        sizeMm: entryMm,
        face: 'condensed-bold',
      }),
    );
    left += widthMm;
  }
  marks.push(shape([boxOutline(box)], null, pen(INK, 0.35)));
  return marks;
}
