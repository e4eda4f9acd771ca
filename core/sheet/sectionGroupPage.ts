import { formatArea, formatVolume } from '../units/index.ts';
import { at, INK, line, type PageBox, pen, SOFT_INK, text } from './drawing.ts';
import { drawMap } from './drawMap.ts';
import { drawMapFoot, MAP_FOOT_MM } from './mapFoot.ts';
import { findGroundBounds, type GroundBounds, viewOf } from './mapView.ts';
import { northLetter } from './overviewPage.ts';
import { paperPlan } from './paper.ts';
import type { PageMark } from './page.ts';
import { draftingScales, findFittingScale, scaleWords } from './scale.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';

export const SECTIONS_TO_A_PAGE = 4;

const ACROSS = 2;
const CAPTION_MM = 6.5;
const GAP_MM = 5;
const AIR_MM = 7;

/** Up to four sections on one page, each map to the one scale that fits the largest of them. */
export function groupPage(context: SheetContext, loads: readonly LoadFigures[]): DraftPage {
  const { units, figures } = context;
  const paper = paperPlan(context.paper, 'portrait');
  const { body } = paper;
  const foot = { ...body, yMm: body.yMm + body.heightMm - MAP_FOOT_MM, heightMm: MAP_FOOT_MM };
  const boxes = panelBoxes({ ...body, heightMm: body.heightMm - MAP_FOOT_MM - 3 });
  const bounds = loads.map((load) => findGroundBounds(load.section.region.outer) as GroundBounds);
  const scale = Math.max(
    ...bounds.map((bound, i) => sectionScale(context, bound, mapBoxOf(boxes[i] as PageBox), AIR_MM)),
  );
  const marks = loads.flatMap((load, i): PageMark[] => {
    const box = boxes[i] as PageBox;
    const map = mapBoxOf(box);
    const view = viewOf(bounds[i] as GroundBounds, map, scale);
    const figuresWords = [
      formatArea(load.areaM2, units),
      formatVolume(load.productL, units, figures.productUnit),
    ].join(', ');
    return [
      text(box.xMm, box.yMm + 4.2, `${load.section.id}`, { sizeMm: 4.4, face: 'condensed-bold' }),
      text(box.xMm + box.widthMm, box.yMm + 4.2, figuresWords, {
        sizeMm: 3.1,
        face: 'condensed',
        align: 'right',
        colour: SOFT_INK,
      }),
      line([at(box.xMm, map.yMm - 0.8), at(box.xMm + box.widthMm, map.yMm - 0.8)], pen(INK, 0.25)),
      ...drawMap(view, { ...context, focus: [load.section.id], pictureOpacity: 0 }).marks,
    ];
  });
  const first = loads[0]?.section.id ?? '';
  const last = loads.at(-1)?.section.id ?? '';
  return {
    paper,
    title: first === last ? `Section ${first}` : `Sections ${first} to ${last}`,
    subtitle: '',
    scaleWords: scaleWords(scale, units),
    marks: [...marks, ...drawMapFoot(foot, scale, units, northLetter(context))],
  };
}

function panelBoxes(body: PageBox): PageBox[] {
  const widthMm = (body.widthMm - GAP_MM) / ACROSS;
  const heightMm = (body.heightMm - GAP_MM) / (SECTIONS_TO_A_PAGE / ACROSS);
  return Array.from({ length: SECTIONS_TO_A_PAGE }, (_, i) => ({
    xMm: body.xMm + (i % ACROSS) * (widthMm + GAP_MM),
    yMm: body.yMm + Math.floor(i / ACROSS) * (heightMm + GAP_MM),
    widthMm,
    heightMm: heightMm,
  }));
}

function mapBoxOf(panel: PageBox): PageBox {
  return { ...panel, yMm: panel.yMm + CAPTION_MM, heightMm: panel.heightMm - CAPTION_MM };
}

/** The largest drafting scale at which a section and the air round it fit a map box. */
export function sectionScale(
  context: SheetContext,
  bounds: GroundBounds,
  map: PageBox,
  airMm: number,
): number {
  const fitting = findFittingScale(
    context.units,
    bounds.maxXM - bounds.minXM,
    bounds.maxYM - bounds.minYM,
    map.widthMm - 2 * airMm,
    map.heightMm - 2 * airMm,
  );
  // The overview has been laid out, so a part of the yard fits at the smallest scale there is.
  return fitting ?? (draftingScales(context.units).at(-1) as number);
}
