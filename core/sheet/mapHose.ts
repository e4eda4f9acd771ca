import { type HosePlan, hoseWords } from '../hose/index.ts';
import { formatEnough } from '../units/index.ts';
import { circleOutline, INK, line, pen, shape, WHITE } from './drawing.ts';
import { type MapView, yardToPage } from './mapView.ts';
import type { PageMark } from './page.ts';
import type { PagePoint } from '../spaces.ts';
import type { SheetContext } from './sheetContext.ts';

const OUTER_MM = 0.9;
const WITHIN_MM = 0.5;
const BEND_MM = 0.9;

/** The hose as two fine lines close together, so that no dash or colour is needed to tell it from a pass. */
export function hoseLine(points: readonly PagePoint[]): PageMark[] {
  return [line(points, pen(INK, OUTER_MM)), line(points, pen(WHITE, WITHIN_MM))];
}

/** How the hose lies to some sections when they are begun, a ring at every corner it bends at. */
export function drawHose(view: MapView, hose: HosePlan | null, sectionIds: readonly string[]): PageMark[] {
  const laid = hose?.sections.filter(({ sectionId }) => sectionIds.includes(sectionId)) ?? [];
  return laid.flatMap((section) => {
    if (section.line.length < 2) return [];
    const bends = section.bends.map(({ at }) =>
      shape([circleOutline(yardToPage(view, at), BEND_MM)], WHITE, pen(INK, 0.25)),
    );
    return [...hoseLine(section.line.map((place) => yardToPage(view, place))), ...bends];
  });
}

/** "Hose from front spigot, 62 ft, bends at NE corner of house"; undefined where no hose is dragged. */
export function hoseLineWords({ plan, units }: SheetContext, sectionId: string): string | undefined {
  const { hose, request } = plan.ground;
  const section = hose?.sections.find((each) => each.sectionId === sectionId);
  if (section === undefined || request.hose === null) return undefined;
  const words = hoseWords(section, request.hose, units);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** "62 ft, front spigot" for a table; "" where no hose is dragged. */
export function hoseCellWords({ plan, units }: SheetContext, sectionId: string): string {
  const { hose, request } = plan.ground;
  const section = hose?.sections.find((each) => each.sectionId === sectionId);
  if (section === undefined) return '';
  const spigot = request.hose?.spigots.find(({ id }) => id === section.spigotId);
  if (spigot === undefined || section.neededM === null) return 'no way';
  return `${formatEnough(section.neededM, units)}, ${spigot.name}`;
}
