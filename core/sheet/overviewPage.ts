import type { Result } from '../result.ts';
import { ok, trouble } from '../result.ts';
import { formatAreaBoth, formatTime } from '../units/index.ts';
import { drawMap } from './drawMap.ts';
import { drawLegend } from './legend.ts';
import { drawMapFoot, MAP_FOOT_MM } from './mapFoot.ts';
import { findGroundBounds, type GroundBounds, viewOf } from './mapView.ts';
import { type Orientation, paperPlan } from './paper.ts';
import { findFittingScale, fitsAtScale, scaleWords } from './scale.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';
import { countWords } from './sheetWords.ts';

/** Room kept round the yard for flags, names and tape readings that stand outside it. */
const AIR_MM = 9;

/** The whole yard on one page, at the largest drafting scale that fits or the one asked for. */
export function overviewPage(context: SheetContext): Result<DraftPage> {
  const { yard, units } = context;
  const bounds = findGroundBounds([
    ...yard.outlines.flatMap((outline) => outline.outer),
    ...yard.marks.map((mark) => mark.at),
  ]);
  if (bounds === undefined)
    return trouble({ kind: 'plan/nothing-to-treat', where: { thing: yard.details.name }, facts: {} });
  const layouts = (['portrait', 'landscape'] as const).map((orientation) => {
    const layout = overviewLayout(context, orientation);
    return { ...layout, fits: fittingScale(context, bounds, layout) };
  });
  const roomiest = layouts.reduce((best, next) =>
    (next.fits ?? Number.POSITIVE_INFINITY) < (best.fits ?? Number.POSITIVE_INFINITY) ? next : best,
  );
  const asked = context.scale;
  if (roomiest.fits === undefined) {
    return trouble({
      kind: 'shape/too-large',
      where: { outlineId: 'yard', name: yard.details.name },
      facts: { extentM: Math.max(bounds.maxXM - bounds.minXM, bounds.maxYM - bounds.minYM) },
    });
  }
  const chosen = asked === 'auto' ? roomiest : layouts.find((layout) => fitsHere(bounds, layout, asked));
  if (chosen === undefined) {
    return trouble({
      kind: 'value/scale-does-not-fit',
      where: { field: 'scale' },
      facts: { scale: asked as number, fittingScale: roomiest.fits },
    });
  }
  const scale = asked === 'auto' ? roomiest.fits : asked;
  const { paper, mapBox, legend } = chosen;
  const view = viewOf(bounds, mapBox, scale);
  const map = drawMap(view, { ...context, focus: null });
  const foot = {
    ...paper.body,
    yMm: paper.body.yMm + paper.body.heightMm - MAP_FOOT_MM,
    heightMm: MAP_FOOT_MM,
  };
  const { plan, figures } = context;
  return ok({
    paper,
    title: 'Overview',
    subtitle: [
      `${formatAreaBoth(figures.zoneSum.treatedM2, units)} to treat`,
      countWords(figures.loads.length, 'load', 'loads'),
      `walking ${formatTime(plan.ground.timeS)}`,
    ].join(', '),
    scaleWords: scaleWords(scale, units),
    marks: [...map.marks, ...legend.marks, ...drawMapFoot(foot, scale, units, northLetter(context))],
  });
}

/** A loose yard has no north of its own: its arrow shows the drawing's. */
export function northLetter({ yard }: SheetContext): string {
  return yard.details.frame.kind === 'placed' ? 'N' : 'plan N';
}

function overviewLayout(context: SheetContext, orientation: Orientation) {
  const paper = paperPlan(context.paper, orientation);
  const { body } = paper;
  const hasCutLines = context.plan.ground.cutLines.length > 0;
  const legendOf = (yMm: number) => drawLegend(body.xMm, yMm, body.widthMm, context.yard, hasCutLines);
  const mapHeightMm = body.heightMm - MAP_FOOT_MM - 3 - legendOf(0).heightMm;
  const mapBox = { ...body, heightMm: mapHeightMm };
  return { paper, mapBox, legend: legendOf(body.yMm + mapHeightMm + 2) };
}

type Layout = ReturnType<typeof overviewLayout>;

function fittingScale({ units }: SheetContext, bounds: GroundBounds, { mapBox }: Layout): number | undefined {
  return findFittingScale(
    units,
    bounds.maxXM - bounds.minXM,
    bounds.maxYM - bounds.minYM,
    mapBox.widthMm - 2 * AIR_MM,
    mapBox.heightMm - 2 * AIR_MM,
  );
}

/** A scale the person asks for may use the air round the yard, but not the frame. */
function fitsHere(bounds: GroundBounds, { mapBox }: Layout, scale: number): boolean {
  const widthM = bounds.maxXM - bounds.minXM;
  const heightM = bounds.maxYM - bounds.minYM;
  return scale > 0 && fitsAtScale(scale, widthM, heightM, mapBox.widthMm - 2, mapBox.heightMm - 2);
}
