import type { CutLine } from '../sections/index.ts';
import type { PagePoint } from '../spaces.ts';
import { formatTape } from '../units/index.ts';
import type { Yard } from '../yard.ts';
import {
  at,
  FLAG_INK,
  growBox,
  INK,
  line,
  type PageBox,
  pen,
  shape,
  text,
  textBox,
  WHITE,
} from './drawing.ts';
import { findFlagTapes, type FlagTape } from './flagTape.ts';
import { isFree, type LabelRoom } from './labelRoom.ts';
import { drawFlag, FLAG_HEIGHT_MM, FLAG_WIDTH_MM } from './mapSymbols.ts';
import { type MapView, yardToPage } from './mapView.ts';
import { textWidthMm } from './measureText.ts';
import { distanceMm, edgesMeetBox } from './pageGeometry.ts';
import { boxOutline } from './drawing.ts';
import type { PageMark } from './page.ts';

/** Dashed cut lines with a flag at each end. Their places are noted in the room first, so labels keep off them. */
export function drawCutLines(view: MapView, room: LabelRoom, cutLines: readonly CutLine[]): PageMark[] {
  const flags: PageMark[] = [];
  const lines = cutLines.map((cutLine) => {
    const ends = [yardToPage(view, cutLine.from), yardToPage(view, cutLine.to)] as const;
    room.lines.push({ points: ends, closed: false });
    for (const foot of ends) {
      flags.push(...drawFlag(foot));
      room.taken.push(flagBox(foot));
    }
    return line(ends, pen(FLAG_INK, 0.5, [2, 1.1]));
  });
  return [...lines, ...flags];
}

function flagBox(foot: PagePoint): PageBox {
  return {
    xMm: foot.xMm - 0.6,
    yMm: foot.yMm - FLAG_HEIGHT_MM - 0.2,
    widthMm: FLAG_WIDTH_MM + 0.8,
    heightMm: FLAG_HEIGHT_MM + 0.8,
  };
}

const SIZE_MM = 2.7;
const OFFSET_MM = 2.2;

/** A dimension line beside the edge a tape is laid along, with its reading; left out where there is no room. */
export function drawTapes(
  view: MapView,
  room: LabelRoom,
  yard: Yard,
  cutLines: readonly CutLine[],
): PageMark[] {
  return cutLines.flatMap((cutLine) =>
    findFlagTapes(yard, cutLine).flatMap((tape) =>
      tape === undefined ? [] : drawTape(view, room, yard, tape),
    ),
  );
}

function drawTape(view: MapView, room: LabelRoom, yard: Yard, tape: FlagTape): PageMark[] {
  const corner = yardToPage(view, tape.corner);
  const flag = yardToPage(view, tape.flag);
  const [a, b] =
    corner.xMm < flag.xMm || (corner.xMm === flag.xMm && corner.yMm > flag.yMm)
      ? [corner, flag]
      : [flag, corner];
  const lengthMm = distanceMm(a, b);
  const words = formatTape(tape.alongM, yard.details.unitSystem);
  if (lengthMm < textWidthMm(words, SIZE_MM, 'condensed') + 3) return [];
  const ux = (b.xMm - a.xMm) / lengthMm;
  const uy = (b.yMm - a.yMm) / lengthMm;
  const turnDeg = (Math.atan2(uy, ux) * 180) / Math.PI;
  for (const side of [-1, 1]) {
    const shift = (point: PagePoint, byMm: number) =>
      at(point.xMm - side * uy * byMm, point.yMm + side * ux * byMm);
    const [from, to] = [shift(a, OFFSET_MM), shift(b, OFFSET_MM)];
    const middle = at((from.xMm + to.xMm) / 2, (from.yMm + to.yMm) / 2);
    // The reading stands in the line, its capitals centred on it.
    const mark = text(middle.xMm - uy * 0.35 * SIZE_MM, middle.yMm + ux * 0.35 * SIZE_MM, words, {
      sizeMm: SIZE_MM,
      face: 'condensed',
      align: 'centre',
      turnDeg,
    });
    const box = growBox(textBox(mark), 0.3);
    const dimension = { points: [from, to], closed: false };
    const blocked = room.taken.some((other) => edgesMeetBox([dimension], growBox(other, 0.2)));
    if (blocked || !isFree(room, box) || room.lines.some((other) => edgesMeetBox([other], box))) continue;
    room.taken.push(box);
    room.lines.push(dimension);
    const ticks = [from, to].map((end) =>
      line([at(end.xMm + uy, end.yMm - ux), at(end.xMm - uy, end.yMm + ux)], pen(INK, 0.2)),
    );
    return [line([from, to], pen(INK, 0.15)), ...ticks, shape([boxOutline(box)], WHITE, null), mark];
  }
  return [];
}
