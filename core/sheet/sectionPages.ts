import type { CutLine, Section } from '../sections/index.ts';
import {
  formatAngle,
  formatArea,
  formatLength,
  formatTape,
  formatTime,
  formatVolume,
} from '../units/index.ts';
import { type PageBox, text } from './drawing.ts';
import { drawMap } from './drawMap.ts';
import { findFlagTapes } from './flagTape.ts';
import {
  drawLedger,
  LEDGER_HEAD_MM,
  LEDGER_ROW_MM,
  type Ledger,
  type LedgerRow,
  ledgerHeightMm,
} from './ledger.ts';
import { groupPage, SECTIONS_TO_A_PAGE, sectionScale } from './sectionGroupPage.ts';
import { drawMapFoot, MAP_FOOT_MM } from './mapFoot.ts';
import { findGroundBounds, type GroundBounds, viewOf } from './mapView.ts';
import { northLetter } from './overviewPage.ts';
import { paperPlan } from './paper.ts';
import { passTables } from './passTable.ts';
import type { PageMark } from './page.ts';
import { scaleWords } from './scale.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';
import { dialWords } from './sheetWords.ts';

/** Room round a section on its own map, for flags and tape readings outside its edge. */
const AIR_MM = 11;
const FIGURES_MM = LEDGER_HEAD_MM + LEDGER_ROW_MM + 3;
const GAP_MM = 4;

/** Where the map and the tables of a section page go: tables below a wide section, beside a tall one. */
interface Arrangement {
  readonly map: PageBox;
  readonly tables: PageBox;
  readonly passGroups: number;
}

/** More sections than this are drawn four to a page; a page each would be a book nobody carries. */
const MOST_SINGLE_PAGES = 24;

/** The section pages in the order the loads are walked. */
export function sectionPages(context: SheetContext): DraftPage[] {
  const { loads } = context.figures;
  if (loads.length <= MOST_SINGLE_PAGES) return loads.map((load) => sectionPage(context, load));
  const pages: DraftPage[] = [];
  for (let start = 0; start < loads.length; start += SECTIONS_TO_A_PAGE) {
    pages.push(groupPage(context, loads.slice(start, start + SECTIONS_TO_A_PAGE)));
  }
  return pages;
}

/** One page for one section: its figures, its map with numbered passes, its flags and the level after each pass. */
function sectionPage(context: SheetContext, load: LoadFigures): DraftPage {
  const { units, plan } = context;
  const { section } = load;
  const paper = paperPlan(context.paper, 'portrait');
  const bounds = findGroundBounds(section.region.outer) as GroundBounds;
  const choices = arrangements(paper.body).map((arrangement) => ({
    ...arrangement,
    scale: sectionScale(context, bounds, arrangement.map, AIR_MM),
  }));
  const chosen = choices.reduce((best, next) => (next.scale < best.scale ? next : best));
  const map = drawMap(viewOf(bounds, chosen.map, chosen.scale), {
    ...context,
    focus: [section.id],
    pictureOpacity: 0,
  });
  const foot = {
    ...paper.body,
    yMm: paper.body.yMm + FIGURES_MM + chosen.map.heightMm + 3,
    heightMm: MAP_FOOT_MM,
  };
  const marks: PageMark[] = [
    ...drawLedger(paper.body.xMm, paper.body.yMm - 1.5, paper.body.widthMm, figuresLedger(context, load)),
    ...map.marks,
    ...drawMapFoot(foot, chosen.scale, units, northLetter(context)),
  ];
  const cutLines = plan.ground.cutLines.filter(({ between }) => between.includes(section.id));
  let top = chosen.tables.yMm;
  const flags = flagsLedger(context, section, cutLines);
  const { xMm, widthMm } = chosen.tables;
  if (flags !== null) {
    const shown = { ...flags, rows: flags.rows.slice(0, 14) };
    marks.push(text(xMm, top + 3, 'Flags', { sizeMm: 3.5, face: 'condensed-bold' }));
    marks.push(...drawLedger(xMm, top + 3.4, widthMm, shown));
    top += 3.4 + ledgerHeightMm(shown) + GAP_MM;
  }
  const roomMm = chosen.tables.yMm + chosen.tables.heightMm - top - 3.4 - LEDGER_HEAD_MM;
  const rowsEach = Math.floor(roomMm / LEDGER_ROW_MM);
  const passes = plan.ground.passes.filter((pass) => pass.sectionId === section.id);
  if (rowsEach >= 1 && passes.length > 0) {
    marks.push(text(xMm, top + 3, 'Passes', { sizeMm: 3.5, face: 'condensed-bold' }));
    const groupMm = (widthMm - (chosen.passGroups - 1) * GAP_MM) / chosen.passGroups;
    passTables(context, load, passes, rowsEach, chosen.passGroups).forEach((ledger, i) => {
      marks.push(...drawLedger(xMm + i * (groupMm + GAP_MM), top + 3.4, groupMm, ledger));
    });
  }
  return {
    paper,
    title: `Section ${section.id}`,
    subtitle: section.zoneName,
    scaleWords: scaleWords(chosen.scale, units),
    marks,
  };
}

function arrangements(body: PageBox): Arrangement[] {
  const top = body.yMm + FIGURES_MM;
  const heightMm = body.heightMm - FIGURES_MM;
  const lowMapMm = heightMm * 0.56 - MAP_FOOT_MM;
  const tablesTop = top + lowMapMm + 3 + MAP_FOOT_MM + GAP_MM;
  const sideMm = 66;
  const tallMapMm = heightMm - MAP_FOOT_MM - 3;
  return [
    {
      map: { ...body, yMm: top, heightMm: lowMapMm },
      tables: { ...body, yMm: tablesTop, heightMm: body.yMm + body.heightMm - tablesTop },
      passGroups: 3,
    },
    {
      map: { ...body, yMm: top, widthMm: body.widthMm - sideMm - GAP_MM, heightMm: tallMapMm },
      tables: { xMm: body.xMm + body.widthMm - sideMm, yMm: top, widthMm: sideMm, heightMm: tallMapMm },
      passGroups: 1,
    },
  ];
}

function figuresLedger({ units, applicator, figures, plan }: SheetContext, load: LoadFigures): Ledger {
  const own = plan.ground.sectionFigures.find((entry) => entry.sectionId === load.section.id);
  const hoseEnd = applicator.kind === 'hose-end';
  const other = units === 'us' ? 'metric' : 'us';
  const row: LedgerRow = [
    String(load.load),
    { entry: formatArea(load.areaM2, units), soft: formatArea(load.section.areaM2, other) },
    formatVolume(load.productL, units, figures.productUnit),
    formatVolume(load.carrierL, units, figures.carrierUnit),
    ...(hoseEnd ? [dialWords(load.dialRatio, units)] : []),
    own === undefined ? '' : formatAngle(own.headingDeg),
    own === undefined ? '' : String(own.passes),
    own === undefined ? '' : formatLength(own.onLengthM, units),
    own === undefined ? '' : formatTime(own.timeS),
  ];
  return {
    columns: [
      { title: 'load', share: 0.6, align: 'left' },
      { title: 'treats', share: 1.9, align: 'right' },
      { title: hoseEnd ? 'in the bottle' : 'product', share: 1.1, align: 'right' },
      { title: hoseEnd ? 'through the hose' : 'carrier', share: 1.15, align: 'right' },
      ...(hoseEnd ? [{ title: 'dial', share: 1.1, align: 'right' } as const] : []),
      { title: 'lanes run', share: 0.85, align: 'right' },
      { title: 'passes', share: 0.7, align: 'right' },
      { title: 'walk on', share: 1.05, align: 'right' },
      { title: 'time', share: 0.8, align: 'right' },
    ],
    rows: [row],
    sum: null,
  };
}

/** Each cut line of the section: its neighbour, its length, and the tape distance of both ends. */
function flagsLedger(
  { yard, units }: SheetContext,
  section: Section,
  cutLines: readonly CutLine[],
): Ledger | null {
  if (cutLines.length === 0) return null;
  const rows = cutLines.flatMap((cutLine) => {
    const neighbour = cutLine.between.find((id) => id !== section.id) ?? section.id;
    const lengthM = Math.hypot(cutLine.to.xM - cutLine.from.xM, cutLine.to.yM - cutLine.from.yM);
    return findFlagTapes(yard, cutLine).map(
      (tape, i): LedgerRow => [
        i === 0 ? `to ${neighbour}` : '',
        i === 0 ? formatTape(lengthM, units) : '',
        tape === undefined ? '' : formatTape(tape.alongM, units),
        tape === undefined ? 'on a curve: use the map' : tape.cornerName,
      ],
    );
  });
  return {
    columns: [
      { title: 'line', share: 0.8, align: 'left' },
      { title: 'long', share: 1.1, align: 'right' },
      { title: 'flag at', share: 1.1, align: 'right' },
      { title: 'taped from', share: 2.4, align: 'left' },
    ],
    rows,
    sum: null,
  };
}
