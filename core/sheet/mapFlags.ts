import type { Cut, CutLine } from '../sections/index.ts';
import type { PagePoint, YardPoint } from '../spaces.ts';
import { type Flag, pointsUsed, printedFlag, shortName, type StakedLine } from '../staking/index.ts';
import type { UnitSystem } from '../yard.ts';
import {
  at,
  centredText,
  circleOutline,
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
import { centredBox, findRoomBeside, isFree, type LabelRoom } from './labelRoom.ts';
import { drawFlag, FLAG_HEIGHT_MM, FLAG_WIDTH_MM } from './mapSymbols.ts';
import { type MapView, yardToPage } from './mapView.ts';
import { type Face, textWidthMm } from './measureText.ts';
import { distanceMm, edgesMeetBox, findStrokeInBox, insideSubpaths } from './pageGeometry.ts';
import { boxOutline } from './drawing.ts';
import type { PageMark } from './page.ts';

/**
 * Cut lines with a flag at each end: dashed where the plan placed them, whole with a dot at both ends where the person
 * holds them, as on the screen. Their places are noted in the room first, so labels keep off them.
 *
 * @param cuts the cuts the lines are parts of
 */
export function drawCutLines(
  view: MapView,
  room: LabelRoom,
  lines: readonly StakedLine[],
  cuts: readonly Pick<Cut, 'heldId'>[],
): PageMark[] {
  const marks = lines.flatMap(({ cutLine }) => {
    const ends = [yardToPage(view, cutLine.from), yardToPage(view, cutLine.to)] as const;
    room.lines.add({ points: ends, closed: false });
    return isHeld(cutLine, cuts) ? heldLine(ends) : [plannedLine(ends)];
  });
  return [...marks, ...drawFlags(view, room, flagsOf(lines))];
}

type Ends = readonly [PagePoint, PagePoint];

/** A cut line the plan placed. */
export function plannedLine(ends: Ends): PageMark {
  return line(ends, pen(FLAG_INK, 0.5, [2, 1.1]));
}

const DOT_MM = 0.95;

/** A cut line the person keeps in place. */
export function heldLine(ends: Ends): PageMark[] {
  return [
    line(ends, pen(FLAG_INK, 0.5)),
    ...ends.map((end) => shape([circleOutline(end, DOT_MM)], FLAG_INK, null)),
  ];
}

/** Whether a cut line is a part of a cut the person holds. */
export function isHeld({ cut }: Pick<CutLine, 'cut'>, cuts: readonly Pick<Cut, 'heldId'>[]): boolean {
  return (cuts[cut]?.heldId ?? null) !== null;
}

function flagsOf(lines: readonly StakedLine[]): readonly Flag[] {
  return [...new Set(lines.flatMap(({ flags }) => flags))];
}

const LETTER_MM = 3.4;

/** Every flag and, beside it, its letter: the first of all labels, because the table is read by it. */
function drawFlags(view: MapView, room: LabelRoom, flags: readonly Flag[]): PageMark[] {
  const feet = flags.map((flag) => ({ flag, foot: yardToPage(view, flag.at) }));
  for (const { foot } of feet) room.taken.push(flagBox(foot));
  const letters = feet.flatMap(({ flag, foot }) => {
    if (!isFree({ ...room, taken: [] }, flagBox(foot))) return [];
    const widthMm = textWidthMm(flag.letter, LETTER_MM, 'condensed-bold') + 0.6;
    const place = findRoomBeside(room, flagBox(foot), widthMm, LETTER_MM);
    return place === undefined ? [] : putWords(room, place, flag.letter, LETTER_MM, 'condensed-bold');
  });
  return [...feet.flatMap(({ foot }) => drawFlag(foot)), ...letters];
}

const CORNER_MM = 2.5;

/** The numbers of corners that are not alone on their side, where the tapes of these lines begin. */
export function drawCornerNames(view: MapView, room: LabelRoom, lines: readonly StakedLine[]): PageMark[] {
  return pointsUsed(flagsOf(lines), lines).flatMap((point) => {
    const words = shortName(point);
    const corner = yardToPage(view, point.at);
    if (words === null || !isFree({ ...room, taken: [] }, centredBox(corner, 1, 1))) return [];
    const widthMm = textWidthMm(words, CORNER_MM, 'condensed') + 0.6;
    const place = findRoomBeside(room, centredBox(corner, 1, 1), widthMm, CORNER_MM);
    if (place === undefined) return [];
    return [
      shape([circleOutline(corner, 0.55)], WHITE, pen(INK, 0.2)),
      ...putWords(room, place, words, CORNER_MM, 'condensed'),
    ];
  });
}

/** Words on white, so that no line runs through them. */
function putWords(room: LabelRoom, place: PagePoint, words: string, sizeMm: number, face: Face): PageMark[] {
  const box = centredBox(place, textWidthMm(words, sizeMm, face) + 0.6, sizeMm);
  room.taken.push(box);
  const crossed = room.lines.countMeeting(box) > 0;
  return [
    ...(crossed ? [shape([boxOutline(growBox(box, -0.1))], WHITE, null)] : []),
    centredText(place, words, { sizeMm, face, colour: INK }),
  ];
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
  lines: readonly StakedLine[],
  units: UnitSystem,
): PageMark[] {
  return flagsOf(lines).flatMap((flag) => {
    const { setting, at: place } = flag;
    if (setting.kind !== 'edge' || setting.off !== null) return [];
    const printed = printedFlag(flag, units);
    if (printed.kind !== 'edge') return [];
    return drawTape(view, room, { corner: setting.corner.at, flag: place, words: printed.along });
  });
}

interface Tape {
  readonly corner: YardPoint;
  readonly flag: YardPoint;
  readonly words: string;
}

function drawTape(view: MapView, room: LabelRoom, tape: Tape): PageMark[] {
  const { words } = tape;
  const corner = yardToPage(view, tape.corner);
  const flag = yardToPage(view, tape.flag);
  const [a, b] =
    corner.xMm < flag.xMm || (corner.xMm === flag.xMm && corner.yMm > flag.yMm)
      ? [corner, flag]
      : [flag, corner];
  const lengthMm = distanceMm(a, b);
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
