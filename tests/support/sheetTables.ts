import type { SheetPage, TextMark } from '../../core/sheet/index.ts';
import { textBox } from '../../core/sheet/drawing.ts';
import { textMarksOf } from './sheetPages.ts';

export interface PrintedTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly sum: readonly string[] | null;
}

/** Sizes of the ledger's head and entries, as drawn. */
const HEAD_MM = 2.6;
const ENTRY_MM = 3.1;

/**
 * Reads the tables back from a page as a person would: a line of small heads, then lines of entries, each entry
 * in the column whose head it lies under or ends with; a bold line is the sum.
 */
export function tablesOn(page: SheetPage): PrintedTable[] {
  const marks = textMarksOf(page.marks).filter((mark) => mark.face.startsWith('condensed'));
  const lines = linesOf(marks.filter((mark) => mark.sizeMm === HEAD_MM || mark.sizeMm === ENTRY_MM));
  const tables: PrintedTable[] = [];
  let heads: readonly TextMark[] = [];
  let rows: string[][] = [];
  const close = (sum: string[] | null) => {
    if (heads.length > 1 && rows.length > 0)
      tables.push({ heads: heads.map((head) => head.text), rows, sum });
    heads = [];
    rows = [];
  };
  for (const line of lines) {
    if (line.every((mark) => mark.sizeMm === HEAD_MM)) {
      close(null);
      heads = line;
    } else if (heads.length > 0) {
      const entries = inColumns(heads, line);
      if (line.every((mark) => mark.face === 'condensed-bold')) close(entries);
      else rows.push(entries);
    }
  }
  close(null);
  return tables;
}

function linesOf(marks: readonly TextMark[]): TextMark[][] {
  const lines = new Map<number, TextMark[]>();
  for (const mark of marks) {
    const y = Math.round(mark.at.yMm * 100);
    lines.set(y, [...(lines.get(y) ?? []), mark]);
  }
  return [...lines.entries()]
    .sort(([a], [b]) => a - b)
    .map(([, line]) => line.sort((a, b) => textBox(a).xMm - textBox(b).xMm));
}

/** Left-aligned entries begin where their head begins; right-aligned ones end in front of the next column. */
function inColumns(heads: readonly TextMark[], line: readonly TextMark[]): string[] {
  const entries = heads.map(() => '');
  for (const mark of line) {
    const box = textBox(mark);
    const distances = heads.map((head) => {
      const own = textBox(head);
      if (head.align !== mark.align) return Number.POSITIVE_INFINITY;
      return mark.align === 'left'
        ? Math.abs(own.xMm - box.xMm)
        : Math.abs(own.xMm + own.widthMm - box.xMm - box.widthMm);
    });
    const nearest = distances.indexOf(Math.min(...distances));
    entries[nearest] = mark.text;
  }
  return entries;
}
