import { at, COLUMN_RULE, INK, line, type PageBox, pen, RULE, SOFT_INK, text } from './drawing.ts';
import { type Face, shortenText, textWidthMm } from './measureText.ts';
import type { PageColour, PageMark } from './page.ts';

export interface LedgerColumn {
  readonly title: string;
  /** Share of the table's width. */
  readonly share: number;
  readonly align: 'left' | 'right';
}

/** An entry and, after it in a lighter hand, what qualifies it (its ±). */
export interface LedgerCell {
  readonly entry: string;
  readonly soft?: string;
}

export type LedgerRow = readonly (LedgerCell | string)[];

export interface Ledger {
  readonly columns: readonly LedgerColumn[];
  readonly rows: readonly LedgerRow[];
  /** Ruled single above and double below, as in a cash book; null = no sum. */
  readonly sum: LedgerRow | null;
}

/** The table without the columns at these places, counted from 0. */
export function withoutColumns(ledger: Ledger, places: readonly number[]): Ledger {
  const keep = <T>(cells: readonly T[]): T[] => cells.filter((_, i) => !places.includes(i));
  return {
    columns: keep(ledger.columns),
    rows: ledger.rows.map(keep),
    sum: ledger.sum === null ? null : keep(ledger.sum),
  };
}

export const LEDGER_ROW_MM = 5.4;
export const LEDGER_HEAD_MM = 5.6;

const SIZE_MM = 3.1;
const HEAD_SIZE_MM = 2.6;
const SOFT_SIZE_MM = 2.5;
const PAD_MM = 1.4;

export function ledgerHeightMm(ledger: Ledger): number {
  return LEDGER_HEAD_MM + (ledger.rows.length + (ledger.sum === null ? 0 : 1)) * LEDGER_ROW_MM + 1;
}

/** A ruled table: green row rules, pale red column rules, figures to the right; an entry is shortened only where no column has room to spare. */
export function drawLedger(xMm: number, yMm: number, widthMm: number, ledger: Ledger): PageMark[] {
  const right = xMm + widthMm;
  const cells = columnBoxes(xMm, widthMm, ledger);
  const marks: PageMark[] = [];
  ledger.columns.forEach((column, i) => {
    const style = { sizeMm: HEAD_SIZE_MM, face: 'condensed', colour: SOFT_INK } as const;
    marks.push(
      ...drawEntry(cells[i] as PageBox, yMm + LEDGER_HEAD_MM, column, { entry: column.title }, style),
    );
  });
  marks.push(line([at(xMm, yMm + LEDGER_HEAD_MM), at(right, yMm + LEDGER_HEAD_MM)], pen(INK, 0.25)));
  let foot = yMm + LEDGER_HEAD_MM;
  for (const row of ledger.rows) {
    foot += LEDGER_ROW_MM;
    marks.push(...drawRow(cells, foot, ledger.columns, row, 'condensed'));
    marks.push(line([at(xMm, foot), at(right, foot)], pen(RULE, 0.2)));
  }
  if (ledger.sum !== null) {
    marks.push(line([at(xMm, foot), at(right, foot)], pen(INK, 0.25)));
    foot += LEDGER_ROW_MM;
    marks.push(...drawRow(cells, foot, ledger.columns, ledger.sum, 'condensed-bold'));
    for (const y of [foot, foot + 0.7]) marks.push(line([at(xMm, y), at(right, y)], pen(INK, 0.25)));
  }
  for (const cell of cells.slice(1)) {
    marks.push(line([at(cell.xMm, yMm + 0.8), at(cell.xMm, foot)], pen(COLUMN_RULE, 0.2)));
  }
  return marks;
}

/**
 * Columns by their shares; one whose entries would be cut short takes what it lacks from those with room to spare:
 * figures first, because half a figure is a wrong one.
 */
function columnBoxes(xMm: number, widthMm: number, ledger: Ledger): PageBox[] {
  const { columns } = ledger;
  const shares = columns.reduce((sum, column) => sum + column.share, 0);
  const needs = columns.map((_, i) => neededMm(ledger, i));
  let widths = columns.map(({ share }) => (widthMm * share) / shares);
  for (const align of ['right', 'left'] as const) {
    const spares = widths.map((width, i) => {
      const need = needs[i] as number;
      // While figures look for room, words give way down to a few letters.
      if (align === 'right' && columns[i]?.align === 'left')
        return Math.max(0, width - Math.min(need, FEW_LETTERS_MM));
      return width - need < 0 && columns[i]?.align !== align ? 0 : width - need;
    });
    const lackMm = spares.reduce((sum, spare) => sum + Math.max(0, -spare), 0);
    const roomMm = spares.reduce((sum, spare) => sum + Math.max(0, spare), 0);
    const movedMm = Math.min(lackMm, roomMm);
    if (movedMm === 0) continue;
    widths = widths.map((width, i) => {
      const spare = spares[i] as number;
      return width - (spare / (spare < 0 ? lackMm : roomMm)) * movedMm;
    });
  }
  let left = xMm;
  return widths.map((width) => {
    const box = { xMm: left, yMm: 0, widthMm: width, heightMm: 0 };
    left += width;
    return box;
  });
}

/** The width at which nothing in a column is cut short. */
function neededMm({ columns, rows, sum }: Ledger, place: number): number {
  const title = textWidthMm((columns[place] as LedgerColumn).title, HEAD_SIZE_MM, 'condensed');
  const entries = rows.map((row) => cellMm(row[place], 'condensed'));
  const total = sum === null ? 0 : cellMm(sum[place], 'condensed-bold');
  return Math.max(title, total, ...entries) + 2 * PAD_MM + ROUNDING_MM;
}

/** A name this wide, with its padding, still tells which it is. */
const FEW_LETTERS_MM = 14;

/** Widths are compared after they were added up another way. */
const ROUNDING_MM = 1e-6;

function cellMm(cell: LedgerCell | string | undefined, face: Face): number {
  if (cell === undefined) return 0;
  const { entry, soft = '' } = typeof cell === 'string' ? { entry: cell } : cell;
  return textWidthMm(entry, SIZE_MM, face) + softMmOf(soft);
}

function softMmOf(soft: string): number {
  return soft === '' ? 0 : textWidthMm(soft, SOFT_SIZE_MM, 'condensed') + 0.9;
}

function drawRow(
  cells: readonly PageBox[],
  footMm: number,
  columns: readonly LedgerColumn[],
  row: LedgerRow,
  face: Face,
): PageMark[] {
  return row.flatMap((cell, i) =>
    drawEntry(
      cells[i] as PageBox,
      footMm,
      columns[i] as LedgerColumn,
      typeof cell === 'string' ? { entry: cell } : cell,
      { sizeMm: SIZE_MM, face, colour: INK },
    ),
  );
}

function drawEntry(
  box: PageBox,
  footMm: number,
  column: LedgerColumn,
  cell: LedgerCell,
  style: { readonly sizeMm: number; readonly face: Face; readonly colour: PageColour },
): PageMark[] {
  const baseMm = footMm - 1.65;
  const left = box.xMm + PAD_MM;
  const right = box.xMm + box.widthMm - PAD_MM;
  const soft = cell.soft ?? '';
  const softMm = softMmOf(soft);
  const entry = shortenText(cell.entry, style.sizeMm, style.face, right - left - softMm);
  if (entry === '') return [];
  const entryMm = textWidthMm(entry, style.sizeMm, style.face);
  const atRight = column.align === 'right';
  const marks: PageMark[] = [
    text(atRight ? right - softMm : left, baseMm, entry, { ...style, align: atRight ? 'right' : 'left' }),
  ];
  if (soft !== '') {
    const softStyle = { sizeMm: SOFT_SIZE_MM, face: 'condensed', colour: SOFT_INK } as const;
    marks.push(
      atRight
        ? text(right, baseMm, soft, { ...softStyle, align: 'right' })
        : text(left + entryMm + 0.9, baseMm, soft, softStyle),
    );
  }
  return marks;
}
