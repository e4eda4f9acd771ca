import type { Pass } from '../passes/index.ts';
import type { PagePoint } from '../spaces.ts';
import { centredText, circleOutline, INK, line, type PageBox, pen, shape, WHITE } from './drawing.ts';
import { centredBox, isFree, type LabelRoom } from './labelRoom.ts';
import { textWidthMm } from './measureText.ts';
import { pathLengthMm, pointAlong } from './pageGeometry.ts';
import type { PageMark } from './page.ts';

export interface PageRoute {
  readonly pass: Pass;
  readonly points: readonly PagePoint[];
}

export interface PassStyle {
  readonly weightMm: number;
  readonly arrowMm: number;
}

const NUMBER_SIZE_MM = 2.3;

/** Each pass as a line; an open arrow head where it ends, or a quarter round for one that closes on itself. */
export function drawRoutes(routes: readonly PageRoute[], style: PassStyle): PageMark[] {
  const stroke = pen(INK, style.weightMm);
  return routes.flatMap(({ pass, points }) => {
    const marks: PageMark[] = [line(points, stroke)];
    const length = pathLengthMm(points);
    if (length < style.arrowMm * 1.5) return marks;
    const tip = pointAlong(points, pass.kind === 'perimeter' ? length * 0.24 + style.arrowMm : length);
    marks.push(line(arrowHead(tip, style.arrowMm), stroke));
    return marks;
  });
}

function arrowHead(
  tip: { readonly point: PagePoint; readonly dx: number; readonly dy: number },
  lengthMm: number,
): PagePoint[] {
  const half = lengthMm * 0.38;
  const back = { xMm: tip.point.xMm - tip.dx * lengthMm, yMm: tip.point.yMm - tip.dy * lengthMm };
  return [
    { xMm: back.xMm - tip.dy * half, yMm: back.yMm + tip.dx * half },
    tip.point,
    { xMm: back.xMm + tip.dy * half, yMm: back.yMm - tip.dx * half },
  ];
}

/** Numbers in circles along the passes, at the start or as near to it as nothing is in the way; which had no room. */
export function numberRoutes(
  room: LabelRoom,
  routes: readonly PageRoute[],
): { readonly marks: PageMark[]; readonly unnumbered: readonly number[] } {
  const marks: PageMark[] = [];
  const unnumbered: number[] = [];
  for (const { pass, points } of routes) {
    const words = String(pass.order);
    const radiusMm = Math.max(1.7, textWidthMm(words, NUMBER_SIZE_MM, 'condensed-bold') / 2 + 0.65);
    const place = findPlaceAlong(room, points, radiusMm);
    if (place === undefined) {
      unnumbered.push(pass.order);
      continue;
    }
    marks.push(shape([circleOutline(place, radiusMm)], WHITE, pen(INK, 0.25)));
    marks.push(centredText(place, words, { sizeMm: NUMBER_SIZE_MM, face: 'condensed-bold' }));
    room.taken.push(circleBox(place, radiusMm));
  }
  return { marks, unnumbered };
}

function findPlaceAlong(
  room: LabelRoom,
  points: readonly PagePoint[],
  radiusMm: number,
): PagePoint | undefined {
  const length = pathLengthMm(points);
  const stepMm = Math.max(radiusMm / 2, length / 60);
  // On a short pass the number stands on its start, so that the arrow head stays clear.
  for (let way = length > radiusMm * 8 ? radiusMm * 1.6 : 0; way <= length; way += stepMm) {
    const { point } = pointAlong(points, way);
    if (isFree(room, circleBox(point, radiusMm))) return point;
  }
  return undefined;
}

function circleBox(centre: PagePoint, radiusMm: number): PageBox {
  return centredBox(centre, 2 * radiusMm, 2 * radiusMm);
}
