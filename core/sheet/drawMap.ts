import type { JobPlan, PlanRequest } from '../plan/index.ts';
import type { Staking } from '../staking/index.ts';
import type { PagePoint, Region } from '../spaces.ts';
import type { Yard } from '../yard.ts';
import { boxesOverlap, boxOutline, INK, pen, SOFT_INK, shape } from './drawing.ts';
import { emptyRoom, type LabelRoom } from './labelRoom.ts';
import { drawCornerNames, drawCutLines, drawTapes } from './mapFlags.ts';
import { drawGround, drawPictures, outlineToPage } from './mapGround.ts';
import { drawHose } from './mapHose.ts';
import { labelMarks, labelOutlines, labelSections, labelZones } from './mapLabels.ts';
import { drawRoutes, numberRoutes, type PageRoute } from './mapPasses.ts';
import { drawMark, drawWalkEnd, SYMBOL_RADIUS_MM } from './mapSymbols.ts';
import { type MapView, regionToPage, yardToPage } from './mapView.ts';
import type { PageMark } from './page.ts';

export interface MapSubject {
  readonly yard: Yard;
  readonly plan: JobPlan;
  readonly staking: Staking;
  /** The sections this map is about; null = the whole yard. */
  readonly focus: readonly string[] | null;
  /** 0 = base pictures left out. */
  readonly pictureOpacity: number;
}

/** Below this spacing on paper, numbers of neighbouring lanes would touch; below the next, lanes are one grey. */
const NUMBERED_SWATH_MM = 4.2;
const DRAWN_SWATH_MM = 1.1;

const UNNUMBERED = { marks: [], unnumbered: [] };

/**
 * One map, cut off at its frame: ground, passes, cut lines, symbols, and every label it has room for. Labels
 * are placed most important first and none may touch another.
 */
export function drawMap(
  view: MapView,
  subject: MapSubject,
): { readonly marks: PageMark[]; readonly unnumbered: readonly number[] } {
  const { yard, plan, staking, focus } = subject;
  const { sections, passes, request } = plan.ground;
  const inFocus = (sectionId: string) => focus === null || focus.includes(sectionId);
  const room = emptyRoom(shrunkFrame(view));
  const swathMm = (request.swathM * 1000) / view.scale;

  const tinted: Region[] = sections.filter((section) => inFocus(section.id)).map((section) => section.region);
  room.turf.push(...tinted.flatMap((region) => regionToPage(view, region)));
  const routes: PageRoute[] =
    swathMm < DRAWN_SWATH_MM
      ? []
      : passes
          .filter((pass) => inFocus(pass.sectionId))
          .map((pass) => ({ pass, points: pass.line.map((point) => yardToPage(view, point)) }));
  for (const route of routes) room.lines.add({ points: route.points, closed: false });
  for (const outline of yard.outlines) {
    const subpaths = outlineToPage(view, outline);
    for (const subpath of subpaths) room.lines.add(subpath);
    if (outline.kind !== 'zone') room.cutOuts.push(...subpaths);
  }

  const shownLines = staking.lines.filter(({ cutLine }) => focus === null || cutLine.between.some(inFocus));
  // Before the letters of the flags: a spigot may stand beside one.
  const symbols = yard.marks.flatMap((mark) => {
    const centre = yardToPage(view, mark.at);
    room.taken.push(symbolBox(centre));
    return drawMark(mark.kind, centre);
  });
  const ends = drawWalkEnds(view, room, request);
  const cuts = drawCutLines(view, room, shownLines, plan.ground.cuts);
  const nameSections = () => labelSections(view, room, sections, focus);
  const numberPasses = () => (swathMm >= NUMBERED_SWATH_MM ? numberRoutes(room, routes) : UNNUMBERED);
  // The overview is read for the sections, a section's own map for its passes: those get the first choice of room.
  const named = focus === null ? nameSections() : [];
  const numbers = numberPasses();
  const sectionNames = focus === null ? named : nameSections();
  const tapes = focus === null ? [] : drawTapes(view, room, shownLines, yard.details.unitSystem);
  const labels = [
    ...drawCornerNames(view, room, shownLines),
    ...labelMarks(view, room, yard.marks),
    ...labelOutlines(view, room, yard.outlines),
    ...(focus === null ? labelZones(view, room, plan.ground.resolved.zones) : []),
  ];
  const style = {
    weightMm: swathMm < 2.5 ? 0.18 : 0.3,
    arrowMm: Math.min(2.6, Math.max(1.2, swathMm * 0.4)),
  };
  const marks: PageMark[] = [
    ...(subject.pictureOpacity > 0 ? drawPictures(view, yard, subject.pictureOpacity) : []),
    ...drawGround(view, yard, tinted, plan.ground.resolved),
    ...drawRoutes(routes, style),
    ...drawHose(view, plan.ground.hose, focus ?? []),
    ...cuts,
    ...tapes,
    ...sectionNames,
    ...numbers.marks,
    ...symbols,
    ...ends,
    ...labels,
  ];
  const frame = [boxOutline(view.box)];
  return {
    marks: [
      { kind: 'clip', subpaths: frame, marks },
      shape(frame, null, pen(focus === null ? INK : SOFT_INK, 0.2)),
    ],
    unnumbered: numbers.unnumbered,
  };
}

/** Where the person starts and finishes, if they said so; one place that is both has room for both signs. */
function drawWalkEnds(view: MapView, room: LabelRoom, { startAt, finishAt }: PlanRequest): PageMark[] {
  const asked = [
    ['start', startAt],
    ['finish', finishAt],
  ] as const;
  return asked.flatMap(([end, place]) => {
    if (place === null) return [];
    const centre = yardToPage(view, place);
    const side = 2 * SYMBOL_RADIUS_MM + 0.4;
    // Beside the spigot it is at, else on the place itself.
    const beside = [0, side, -side, 2 * side].map((dx) => ({ xMm: centre.xMm + dx, yMm: centre.yMm }));
    const at =
      beside.find((point) => !room.taken.some((box) => boxesOverlap(box, symbolBox(point)))) ?? centre;
    room.taken.push(symbolBox(at));
    return drawWalkEnd(end, at);
  });
}

function symbolBox(centre: PagePoint) {
  return {
    xMm: centre.xMm - SYMBOL_RADIUS_MM,
    yMm: centre.yMm - SYMBOL_RADIUS_MM,
    widthMm: 2 * SYMBOL_RADIUS_MM,
    heightMm: 2 * SYMBOL_RADIUS_MM,
  };
}

function shrunkFrame(view: MapView) {
  const { xMm, yMm, widthMm, heightMm } = view.box;
  return { xMm: xMm + 0.6, yMm: yMm + 0.6, widthMm: widthMm - 1.2, heightMm: heightMm - 1.2 };
}
