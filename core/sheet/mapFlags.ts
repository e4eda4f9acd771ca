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
import { distanceMm, edgesMeetBox, findStrokeInBox, insideSubpaths } from './pageGeometry.ts';
import { boxOutline } from './drawing.ts';
import type { PageMark } from './page.ts';

/** Dashed cut lines with a flag at each end. Their places are noted in the room first, so labels keep off them. */
export function drawCutLines(view: MapView, room: LabelRoom, cutLines: readonly CutLine[]): PageMark[] {
  const flags: PageMark[] = [];
  const lines = cutLines.map((cutLine) => {
    const ends = [yardToPage(view, cutLine.from), yardToPage(view, cutLine.to)] as const;
    room.lines.add({ points: ends, closed: false });
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
/** Side of the edge and distance from it, in the order tried: close by, else past the height of a flag. */
const PLACES = [
  [-1, 2.4],
  [1, 2.4],
  [-1, 5.8],
  [1, 5.8],
] as const;

/** A dimension line beside the edge a tape is laid along, with its reading; left out where there is no room. */
export function drawTapes(
  view: MapView,
  room: LabelRoom,
  yard: Yard,
  cutLines: readonly CutLine[],
  allLines: readonly CutLine[],
): PageMark[] {
  // Cut lines that meet share a flag; its tape is drawn once.
  const drawn = new Set<string>();
  return cutLines.flatMap((cutLine) =>
    findFlagTapes(yard, cutLine, allLines).flatMap((tape) => {
      if (tape === undefined) return [];
      const key = [tape.flag, tape.corner].map(({ xM, yM }) => `${xM.toFixed(3)} ${yM.toFixed(3)}`).join(' ');
      if (drawn.has(key)) return [];
      drawn.add(key);
      return drawTape(view, room, yard, tape);
    }),
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
  const leastMm = textWidthMm(words, SIZE_MM, 'condensed') + 3;
  if (lengthMm < leastMm) return [];
  const ux = (b.xMm - a.xMm) / lengthMm;
  const uy = (b.yMm - a.yMm) / lengthMm;
  const turnDeg = (Math.atan2(uy, ux) * 180) / Math.PI;
  for (const [side, offsetMm] of PLACES) {
    const shift = (point: PagePoint, byMm: number) =>
      at(point.xMm - side * uy * byMm, point.yMm + side * ux * byMm);
    const [from, to] = [shift(a, offsetMm), shift(b, offsetMm)];
    const shown = findStrokeInBox(from, to, room.frame);
    if (shown === undefined || distanceMm(...shown) < leastMm) continue;
    const middle = along(...shown, 0.5);
    // The reading stands in the line, its capitals centred on it.
    const mark = text(middle.xMm - uy * 0.35 * SIZE_MM, middle.yMm + ux * 0.35 * SIZE_MM, words, {
      sizeMm: SIZE_MM,
      face: 'condensed',
      align: 'centre',
      turnDeg,
    });
    const box = growBox(textBox(mark), 0.3);
    // The ends stand at the flag and the corner themselves, which are taken by their own signs.
    const clear = Math.min(0.4, 0.8 / lengthMm);
    const inner = { points: [along(from, to, clear), along(from, to, 1 - clear)], closed: false };
    if (room.taken.some((other) => edgesMeetBox([inner], growBox(other, 0.2))) || !isFree(room, box))
      continue;
    if (insideSubpaths(room.cutOuts, middle)) continue;
    if (room.lines.countMeeting(box) > 0) continue;
    room.taken.push(box);
    room.lines.add({ points: [from, to], closed: false });
    const thin = pen(INK, 0.15);
    const extensions = [a, b].map((end) => line([shift(end, 0.8), shift(end, offsetMm + 1)], thin));
    return [line([from, to], thin), ...extensions, shape([boxOutline(box)], WHITE, null), mark];
  }
  return [];
}

function along(from: PagePoint, to: PagePoint, share: number): PagePoint {
  return at(from.xMm + (to.xMm - from.xMm) * share, from.yMm + (to.yMm - from.yMm) * share);
}
