import { tracedRing } from '../curves/index.ts';
import type { Result } from '../result.ts';
import { ok, trouble } from '../result.ts';
import {
  areaFigure,
  counted,
  formatArea,
  formatEnough,
  formatTime,
  otherUnits,
  volumeFigure,
} from '../units/index.ts';
import { drawMap } from './drawMap.ts';
import { drawLedger, type Ledger, ledgerHeightMm, withoutColumns } from './ledger.ts';
import { drawLegend } from './legend.ts';
import { isHeld } from './mapFlags.ts';
import { drawMapFoot, MAP_FOOT_MM } from './mapFoot.ts';
import { hoseCellWords } from './mapHose.ts';
import { findGroundBounds, type GroundBounds, viewOf } from './mapView.ts';
import { type Orientation, paperPlan } from './paper.ts';
import { findFittingScale, fitsAtScale, scaleWords } from './scale.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';

/** Room kept round the yard for flags, names and tape readings that stand outside it. */
const AIR_MM = 9;

/** The whole yard on one page, at the largest drafting scale that fits or the one asked for. */
export function overviewPage(context: SheetContext): Result<DraftPage> {
  const { yard, units } = context;
  const bounds = findGroundBounds([
    ...yard.outlines.flatMap((outline) => tracedRing(outline.outer)),
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
  const { paper } = chosen;
  const table = loadsAtAGlance(context);
  const { mapBox, legendTop, tableTop } = shareBody(chosen, bounds, scale, ledgerHeightMm(table));
  const map = drawMap(viewOf(bounds, mapBox, scale), { ...context, focus: null });
  const { body } = paper;
  const foot = { ...body, yMm: body.yMm + body.heightMm - MAP_FOOT_MM, heightMm: MAP_FOOT_MM };
  const { plan, figures } = context;
  return ok({
    paper,
    title: 'Overview',
    subtitle: [
      `${formatArea(figures.zoneSum.treatedM2, units)} (${formatArea(figures.zoneSum.otherTreatedM2, otherUnits(units))}) to treat`,
      counted(figures.fills.length, 'load'),
      `walking ${formatTime(plan.ground.timeS)}`,
      ...(plan.ground.hose === null
        ? []
        : [`hose ${shortestHoseWords(context) || 'does not get everywhere'}`]),
    ].join(', '),
    scaleWords: scaleWords(scale, units),
    marks: [
      ...map.marks,
      ...chosen.legendAt(
        legendTop,
        map.unnumbered.length > 0 ? 'all passes are numbered on the section pages' : '',
      ).marks,
      ...(tableTop === null ? [] : drawLedger(body.xMm, tableTop, body.widthMm, table)),
      ...drawMapFoot(foot, scale, units, northLetter(context)),
    ],
  });
}

/** When the map leaves enough of the page over, the loads stand under it: one sheet is then enough to take along. */
function shareBody(layout: Layout, bounds: GroundBounds, scale: number, tableMm: number) {
  const { mapBox, legendMm } = layout;
  const groundMm = ((bounds.maxYM - bounds.minYM) * 1000) / scale;
  const spareMm = mapBox.heightMm - groundMm - 2 * AIR_MM;
  const needMm = tableMm + 4;
  const shrunk = spareMm >= needMm ? { ...mapBox, heightMm: mapBox.heightMm - needMm } : mapBox;
  const legendTop = shrunk.yMm + shrunk.heightMm + 2;
  return {
    mapBox: shrunk,
    legendTop,
    tableTop: spareMm >= needMm ? legendTop + legendMm + 1.5 : null,
  };
}

function loadsAtAGlance(context: SheetContext): Ledger {
  const { figures, units, applicator, plan, isPoured } = context;
  const hoseEnd = applicator.kind === 'hose-end';
  const figuresOf = new Map(plan.ground.sectionFigures.map((entry) => [entry.sectionId, entry]));
  const ledger: Ledger = {
    columns: [
      { title: 'load', share: 0.5, align: 'right' },
      { title: 'section', share: 0.7, align: 'left' },
      { title: 'zone', share: 2, align: 'left' },
      {
        title: `${figures.isMixedBySurface ? 'map area' : 'treats'}, ${areaFigure(0, units).unit}`,
        share: 1,
        align: 'right',
      },
      { title: `product, ${figures.productUnit}`, share: 1, align: 'right' },
      { title: `${hoseEnd ? 'water' : 'carrier'}, ${figures.carrierUnit}`, share: 1, align: 'right' },
      { title: 'passes', share: 0.8, align: 'right' },
      { title: 'time', share: 0.8, align: 'right' },
      { title: 'hose', share: 1.9, align: 'left' },
    ],
    rows: figures.loads.map((load) => {
      const own = figuresOf.get(load.section.id);
      return [
        String(load.load),
        load.section.id,
        load.section.zoneName,
        areaFigure(load.areaM2, units).text,
        volumeFigure(load.productL, units, figures.productUnit).text,
        volumeFigure(load.carrierL, units, figures.carrierUnit).text,
        own === undefined ? '' : String(own.passes),
        own === undefined ? '' : formatTime(own.timeS),
        hoseCellWords(context, load.section.id),
      ];
    }),
    sum: [
      '',
      'all',
      '',
      areaFigure(figures.zoneSum.treatedM2, units).text,
      volumeFigure(figures.productTotalL, units, figures.productUnit).text,
      volumeFigure(figures.carrierTotalL, units, figures.carrierUnit).text,
      String(plan.ground.passes.length),
      formatTime(plan.ground.timeS),
      shortestHoseWords(context),
    ],
  };
  const empty = [...(isPoured ? [] : [4, 5]), ...(plan.ground.hose === null ? [8] : [])];
  return withoutColumns(ledger, empty);
}

/** The hose that does the whole job. */
function shortestHoseWords({ plan, units }: SheetContext): string {
  const { hose } = plan.ground;
  return hose === null || hose.shortestHoseM === null ? '' : formatEnough(hose.shortestHoseM, units);
}

/** A loose yard has no north of its own: its arrow shows the drawing's. */
export function northLetter({ yard }: SheetContext): string {
  return yard.details.frame.kind === 'placed' ? 'N' : 'plan N';
}

function overviewLayout(context: SheetContext, orientation: Orientation) {
  const paper = paperPlan(context.paper, orientation);
  const { body } = paper;
  const { cutLines, cuts, resolved, hose, request } = context.plan.ground;
  const ground = {
    ...resolved,
    hasPlannedCuts: cutLines.some((cutLine) => !isHeld(cutLine, cuts)),
    hasHeldCuts: cutLines.some((cutLine) => isHeld(cutLine, cuts)),
    hasStart: request.startAt !== null,
    hasFinish: request.finishAt !== null,
    hasHose: hose !== null,
  };
  const legendAt = (yMm: number, note: string) =>
    drawLegend(body.xMm, yMm, body.widthMm, context.yard, ground, note);
  const legendMm = legendAt(0, '').heightMm;
  return {
    paper,
    mapBox: { ...body, heightMm: body.heightMm - MAP_FOOT_MM - 3 - legendMm },
    legendAt,
    legendMm,
  };
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
