import { formatLength } from '../units/index.ts';
import type { Section } from '../sections/index.ts';
import { flagsLedger, linesLedger, stakesOf } from './flagLedgers.ts';
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
import type { SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';

const GAP_MM = 4;
const TITLE_MM = 3.6;
const FLAGS_MM = 86;

/** What the tables under a map need, at most two fifths of the page. */
export function tablesHeightMm(context: SheetContext, section: Section, bodyMm: number): number {
  const { plan } = context;
  const { flags, lines } = sectionFlags(context, section, FLAGS_MM);
  // The lines stand under the flags with a heading of their own, about two rows high.
  const flagRows = flags.rows.length === 0 ? 0 : flags.rows.length + lines.rows.length + 2;
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
  const { section } = load;
  const flagsMm = beside ? tables.widthMm : FLAGS_MM;
  const { flags, lines } = sectionFlags(context, section, flagsMm);
  const hasFlags = lines.rows.length > 0;
  const marks: PageMark[] = [];
  let room = tables;
  let footMm = tables.yMm;
  if (hasFlags) {
    const flagTables = drawFlagTables(tables, flagsMm, tables.heightMm * (beside ? 0.6 : 1), flags, lines);
    marks.push(...flagTables.marks);
    const downMm = flagTables.heightMm + GAP_MM;
    const rightMm = FLAGS_MM + GAP_MM;
    footMm += downMm;
    room = beside
      ? { ...tables, yMm: tables.yMm + downMm, heightMm: tables.heightMm - downMm }
      : { ...tables, xMm: tables.xMm + rightMm, widthMm: tables.widthMm - rightMm };
  }
  const groups = beside ? 1 : hasFlags ? 2 : 3;
  const groupMm = (room.widthMm - (groups - 1) * GAP_MM) / groups;
  passTables(context, load, Math.max(1, rowsIn(room.heightMm)), groups, groupMm).forEach((ledger, i) => {
    const box = { ...room, xMm: room.xMm + i * (groupMm + GAP_MM) };
    marks.push(...drawTitled(box, groupMm, i === 0 ? 'Passes' : '', ledger));
    if (i === 0) marks.push(swathNote(context, box));
    footMm = Math.max(footMm, room.yMm + TITLE_MM + ledgerHeightMm(ledger) + GAP_MM);
  });
  const left = { ...tables, yMm: footMm, heightMm: tables.yMm + tables.heightMm - footMm };
  return [...marks, ...drawNoteLines(left)];
}

function sectionFlags(context: SheetContext, section: Section, widthMm: number) {
  const { flags, lines } = stakesOf(context, [section]);
  const { units } = context;
  return { flags: flagsLedger(flags, units, widthMm), lines: linesLedger(lines, units, widthMm) };
}

/** The lines under the flags; flags for which there is no room are counted and left to the page that has them all. */
function drawFlagTables(box: PageBox, widthMm: number, roomMm: number, flags: Ledger, lines: Ledger) {
  const linesMm = TITLE_MM + ledgerHeightMm(lines);
  const fits = TITLE_MM + ledgerHeightMm(flags) + GAP_MM / 2 + linesMm <= roomMm;
  const shown = fits ? flags : { ...flags, rows: firstRows(flags.rows, rowsIn(roomMm)) };
  const flagsMm = TITLE_MM + ledgerHeightMm(shown);
  const below = { ...box, yMm: box.yMm + flagsMm + GAP_MM / 2 };
  return {
    marks: [
      ...drawTitled(box, widthMm, 'Flags', shown),
      ...(fits ? drawTitled(below, widthMm, 'Lines', lines) : []),
    ],
    heightMm: fits ? flagsMm + GAP_MM / 2 + linesMm : flagsMm,
  };
}

/** As many rows as fit; when some do not, the last one says where the rest is. */
function firstRows(rows: readonly LedgerRow[], most: number): readonly LedgerRow[] {
  const room = Math.max(0, most - 1);
  return [
    ...rows.slice(0, room),
    ['', '', rows.length > room ? 'more on the page of flags' : 'lines on the page of flags'],
  ];
}

function rowsIn(heightMm: number): number {
  return Math.floor((heightMm - TITLE_MM - LEDGER_HEAD_MM) / LEDGER_ROW_MM);
}

function drawTitled(box: PageBox, widthMm: number, title: string, ledger: Ledger): PageMark[] {
  const table = drawLedger(box.xMm, box.yMm + TITLE_MM, widthMm, ledger);
  if (title === '') return table;
  return [text(box.xMm, box.yMm + 3, title, { sizeMm: 3.5, face: 'condensed-bold' }), ...table];
}

/** Beside the heading of the passes: how far from an edge its pass is walked, which no table of lengths tells. */
function swathNote({ units, plan }: SheetContext, box: PageBox): PageMark {
  const { swathM } = plan.ground.request;
  const [swath, half] = [formatLength(swathM, units), formatLength(swathM / 2, units)];
  const words = `swath ${swath}: walk ${half} inside an edge`;
  return text(box.xMm + NOTE_FROM_MM, box.yMm + 3, words, {
    sizeMm: 2.6,
    face: 'condensed',
    colour: SOFT_INK,
  });
}

const NOTE_FROM_MM = 14;

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
