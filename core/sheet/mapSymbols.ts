import type { PagePoint } from '../spaces.ts';
import type { Mark } from '../yard.ts';
import { at, circleOutline, FLAG_INK, INK, line, pen, shape, text, WATER_INK, WHITE } from './drawing.ts';
import type { PageMark } from './page.ts';

export const SYMBOL_RADIUS_MM = 2;

/** A spigot is a ringed cross, a landmark a survey station: a triangle with a point in it. */
export function drawMark(kind: Mark['kind'], centre: PagePoint): PageMark[] {
  const { xMm, yMm } = centre;
  if (kind === 'spigot') {
    const stroke = pen(WATER_INK, 0.45);
    return [
      shape([circleOutline(centre, 1.75)], WHITE, stroke),
      line([at(xMm - 0.95, yMm), at(xMm + 0.95, yMm)], stroke),
      line([at(xMm, yMm - 0.95), at(xMm, yMm + 0.95)], stroke),
    ];
  }
  const corners = [at(xMm, yMm - 1.9), at(xMm + 1.65, yMm + 0.95), at(xMm - 1.65, yMm + 0.95)];
  return [
    shape([{ points: corners, closed: true }], WHITE, pen(INK, 0.3)),
    shape([circleOutline(centre, 0.35)], INK, null),
  ];
}

/** Where the walk starts: a ring with a wedge pointing on; where it finishes: a ring with a square, as on the screen. */
export function drawWalkEnd(end: 'start' | 'finish', centre: PagePoint): PageMark[] {
  const { xMm, yMm } = centre;
  const sign =
    end === 'start'
      ? [at(xMm - 0.7, yMm - 1.05), at(xMm + 1.1, yMm), at(xMm - 0.7, yMm + 1.05)]
      : [
          at(xMm - 0.75, yMm - 0.75),
          at(xMm + 0.75, yMm - 0.75),
          at(xMm + 0.75, yMm + 0.75),
          at(xMm - 0.75, yMm + 0.75),
        ];
  return [
    shape([circleOutline(centre, SYMBOL_RADIUS_MM)], WHITE, pen(INK, 0.35)),
    shape([{ points: sign, closed: true }], INK, null),
  ];
}

export const FLAG_HEIGHT_MM = 4.2;
export const FLAG_WIDTH_MM = 3;

/** A pennant on a staff, its foot on the point. */
export function drawFlag(foot: PagePoint): PageMark[] {
  const top = foot.yMm - FLAG_HEIGHT_MM;
  const pennant = [at(foot.xMm, top), at(foot.xMm + FLAG_WIDTH_MM, top + 1), at(foot.xMm, top + 2)];
  return [
    line([foot, at(foot.xMm, top)], pen(FLAG_INK, 0.35)),
    shape([{ points: pennant, closed: true }], FLAG_INK, pen(INK, 0.13)),
    shape([circleOutline(foot, 0.5)], FLAG_INK, null),
  ];
}

/** A slim half-filled needle with its letter; `letter` is what the yard knows about north. */
export function drawNorthArrow(foot: PagePoint, heightMm: number, letter: string): PageMark[] {
  const half = heightMm * 0.17;
  const letterMm = 2.8;
  const base = foot.yMm - letterMm - 0.8;
  const top = foot.yMm - heightMm;
  const notch = base - heightMm * 0.14;
  const tip = at(foot.xMm, top);
  return [
    shape(
      [{ points: [tip, at(foot.xMm - half, base), at(foot.xMm, notch)], closed: true }],
      INK,
      pen(INK, 0.2),
    ),
    shape(
      [{ points: [tip, at(foot.xMm + half, base), at(foot.xMm, notch)], closed: true }],
      WHITE,
      pen(INK, 0.2),
    ),
    text(foot.xMm, foot.yMm, letter, { sizeMm: letterMm, face: 'condensed-bold', align: 'centre' }),
  ];
}
