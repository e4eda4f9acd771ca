import { drawMap } from './drawMap.ts';
import type { PageBox } from './drawing.ts';
import { drawLedger, LEDGER_HEAD_MM, LEDGER_ROW_MM } from './ledger.ts';
import { drawMapFoot, MAP_FOOT_MM } from './mapFoot.ts';
import { text } from './drawing.ts';
import { hoseLineWords } from './mapHose.ts';
import { findGroundBounds, type GroundBounds, viewOf } from './mapView.ts';
import { northLetter } from './overviewPage.ts';
import { paperPlan } from './paper.ts';
import { scaleWords } from './scale.ts';
import { groupPage, SECTIONS_TO_A_PAGE, sectionScale } from './sectionGroupPage.ts';
import { figuresLedger } from './sectionLedgers.ts';
import { drawSectionTables, tablesHeightMm } from './sectionTables.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';

/** Room round a section on its own map, for flags and tape readings outside its edge. */
const AIR_MM = 8;
/** No more ground than this is shown round a section: the paper is better used for notes. */
const MOST_AIR_MM = 28;
const FIGURES_MM = LEDGER_HEAD_MM + LEDGER_ROW_MM + 3;
const GAP_MM = 4;
const SIDE_MM = 74;
/** The line that says how the hose lies. */
const HOSE_MM = 5;
const HOSE_SIZE_MM = 3.2;

/** More sections than this are drawn four to a page; a page each would be a book nobody carries. */
const MOST_SINGLE_PAGES = 24;

/** Where the map and the tables of a section page go: tables below a wide section, beside a tall one. */
interface Arrangement {
  readonly map: PageBox;
  readonly beside: boolean;
}

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
  const { units } = context;
  const { section } = load;
  const paper = paperPlan(context.paper, 'portrait');
  const { body } = paper;
  const bounds = findGroundBounds(section.region.outer) as GroundBounds;
  const hoseLine = hoseLineWords(context, section.id);
  const topMm = FIGURES_MM + (hoseLine === undefined ? 0 : HOSE_MM);
  const choices = arrangements(body, topMm, tablesHeightMm(context, section, body.heightMm)).map(
    (choice) => ({
      ...choice,
      scale: sectionScale(context, bounds, choice.map, AIR_MM),
    }),
  );
  const { map, beside, scale } = choices.reduce((best, next) => (next.scale < best.scale ? next : best));
  const groundMm = ((bounds.maxYM - bounds.minYM) * 1000) / scale;
  const mapBox = beside ? map : { ...map, heightMm: Math.min(map.heightMm, groundMm + 2 * MOST_AIR_MM) };
  const footTop = mapBox.yMm + mapBox.heightMm + 3;
  const below = footTop + MAP_FOOT_MM + GAP_MM;
  const tables = beside
    ? { ...map, xMm: body.xMm + body.widthMm - SIDE_MM, widthMm: SIDE_MM }
    : { ...body, yMm: below, heightMm: body.yMm + body.heightMm - below };
  const view = viewOf(bounds, mapBox, scale);
  const foot = { ...body, yMm: footTop, heightMm: MAP_FOOT_MM };
  return {
    paper,
    title: `Section ${section.id}`,
    subtitle: section.zoneName,
    scaleWords: scaleWords(scale, units),
    marks: [
      ...drawLedger(body.xMm, body.yMm - 1.5, body.widthMm, figuresLedger(context, load)),
      ...(hoseLine === undefined
        ? []
        : [
            text(body.xMm, body.yMm + FIGURES_MM + HOSE_SIZE_MM - 1, hoseLine, {
              sizeMm: HOSE_SIZE_MM,
              face: 'condensed',
            }),
          ]),
      ...drawMap(view, { ...context, focus: [section.id], pictureOpacity: 0 }).marks,
      ...drawMapFoot(foot, scale, units, northLetter(context)),
      ...drawSectionTables(context, load, tables, beside),
    ],
  };
}

function arrangements(body: PageBox, topMm: number, tablesMm: number): Arrangement[] {
  const top = body.yMm + topMm;
  const tallMapMm = body.heightMm - topMm - MAP_FOOT_MM - 3;
  return [
    { map: { ...body, yMm: top, heightMm: tallMapMm - tablesMm - GAP_MM }, beside: false },
    {
      map: { ...body, yMm: top, widthMm: body.widthMm - SIDE_MM - GAP_MM, heightMm: tallMapMm },
      beside: true,
    },
  ];
}
