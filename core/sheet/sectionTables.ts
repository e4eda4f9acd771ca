import type { Section } from '../sections/index.ts';
import { at, line, type PageBox, pen, RULE, SOFT_INK, text } from './drawing.ts';
import {
  drawLedger,
  LEDGER_HEAD_MM,
  LEDGER_ROW_MM,
  type Ledger,
  type LedgerRow,
  ledgerHeightMm,
} from './ledger.ts';
import type { PageMark } from './page.ts';
import { passTables } from './passTable.ts';
import { flagsLedger } from './sectionLedgers.ts';
import type { SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';

const GAP_MM = 4;
const TITLE_MM = 3.6;
const FLAGS_MM = 86;

/** What the tables under a map need, at most two fifths of the page. */
export function tablesHeightMm({ plan }: SheetContext, section: Section, bodyMm: number): number {
  const flagRows = 2 * plan.ground.cutLines.filter(({ between }) => between.includes(section.id)).length;
  const passRows = plan.ground.passes.filter((pass) => pass.sectionId === section.id).length;
  const rows = Math.max(flagRows, Math.ceil(passRows / (flagRows > 0 ? 2 : 3)), 4);
  return Math.min(TITLE_MM + LEDGER_HEAD_MM + rows * LEDGER_ROW_MM + 2, bodyMm * 0.4);
}

/** Flags and passes: side by side below a map, one over the other beside it; ruled lines in what is left over. */
export function drawSectionTables(
  context: SheetContext,
  load: LoadFigures,
  tables: PageBox,
  beside: boolean,
): PageMark[] {
  const { plan } = context;
  const { section } = load;
  const cutLines = plan.ground.cutLines.filter(({ between }) => between.includes(section.id));
  const flags = flagsLedger(context, section, cutLines);
  const marks: PageMark[] = [];
  let room = tables;
  let footMm = tables.yMm;
  if (flags !== null) {
    const widthMm = beside ? tables.widthMm : FLAGS_MM;
    const rows = rowsIn(tables.heightMm * (beside ? 0.5 : 1));
    const shown = { ...flags, rows: firstRows(flags.rows, rows) };
    marks.push(...drawTitled(tables, widthMm, 'Flags, taped along edge or line', shown));
    const downMm = TITLE_MM + ledgerHeightMm(shown) + GAP_MM;
    const rightMm = FLAGS_MM + GAP_MM;
    footMm += downMm;
    room = beside
      ? { ...tables, yMm: tables.yMm + downMm, heightMm: tables.heightMm - downMm }
      : { ...tables, xMm: tables.xMm + rightMm, widthMm: tables.widthMm - rightMm };
  }
  const passes = plan.ground.passes.filter((pass) => pass.sectionId === section.id);
  const groups = beside ? 1 : flags === null ? 3 : 2;
  const groupMm = (room.widthMm - (groups - 1) * GAP_MM) / groups;
  passTables(context, load, passes, Math.max(1, rowsIn(room.heightMm)), groups).forEach((ledger, i) => {
    const box = { ...room, xMm: room.xMm + i * (groupMm + GAP_MM) };
    marks.push(...drawTitled(box, groupMm, i === 0 ? 'Passes' : '', ledger));
    footMm = Math.max(footMm, room.yMm + TITLE_MM + ledgerHeightMm(ledger) + GAP_MM);
  });
  const left = { ...tables, yMm: footMm, heightMm: tables.yMm + tables.heightMm - footMm };
  return [...marks, ...drawNoteLines(left)];
}

/** As many rows as fit; when some do not, the last one says how many are left to the map. */
function firstRows(rows: readonly LedgerRow[], most: number): readonly LedgerRow[] {
  if (rows.length <= most) return rows;
  const left = rows.length - most + 1;
  return [...rows.slice(0, most - 1), ['', '', '', `${left} more: map`]];
}

function rowsIn(heightMm: number): number {
  return Math.floor((heightMm - TITLE_MM - LEDGER_HEAD_MM) / LEDGER_ROW_MM);
}

function drawTitled(box: PageBox, widthMm: number, title: string, ledger: Ledger): PageMark[] {
  const table = drawLedger(box.xMm, box.yMm + TITLE_MM, widthMm, ledger);
  if (title === '') return table;
  return [text(box.xMm, box.yMm + 3, title, { sizeMm: 3.5, face: 'condensed-bold' }), ...table];
}

const LINE_MM = 8;
const LEAST_LINES = 3;

/** Ruled lines to write on, where a page has room for a few. */
function drawNoteLines(box: PageBox): PageMark[] {
  const lines = Math.floor((box.heightMm - 5) / LINE_MM);
  if (lines < LEAST_LINES) return [];
  const right = box.xMm + box.widthMm;
  const marks: PageMark[] = [
    text(box.xMm, box.yMm + 4, 'seen on the way', { sizeMm: 2.9, face: 'condensed', colour: SOFT_INK }),
  ];
  for (let i = 1; i <= lines; i++) {
    const y = box.yMm + 4 + i * LINE_MM;
    marks.push(line([at(box.xMm, y), at(right, y)], pen(RULE, 0.25)));
  }
  return marks;
}
