import type { Section } from '../sections/index.ts';
import type { PagePoint } from '../spaces.ts';
import type { Mark, Outline } from '../yard.ts';
import {
  boxOutline,
  centredText,
  growBox,
  INK,
  line,
  type PageBox,
  pen,
  shape,
  SOFT_INK,
  TURF_LINE,
  TURF_TINT,
  WHITE,
} from './drawing.ts';
import { centredBox, findRoomBeside, findRoomInside, isFree, type LabelRoom } from './labelRoom.ts';
import { outlineToPage } from './mapGround.ts';
import { SYMBOL_RADIUS_MM } from './mapSymbols.ts';
import { type MapView, regionToPage, yardToPage } from './mapView.ts';
import { type Face, shortenText, textWidthMm } from './measureText.ts';
import { boundsOf, edgesMeetBox, insideSubpaths } from './pageGeometry.ts';
import type { PageColour, PageMark, PageSubpath } from './page.ts';

/** Line height taken for a label, as a share of its size. */
const HEIGHT_SHARE = 1.05;

interface LabelInk {
  readonly sizeMm: number;
  readonly face: Face;
  readonly colour: PageColour;
  /** What shows behind the words: the label must be readable over hatch and lines. */
  readonly backing: PageColour;
}

/** Section ids in the middle of their ground, large; on a section's own map its neighbours' ids small and soft. */
export function labelSections(
  view: MapView,
  room: LabelRoom,
  sections: readonly Section[],
  focus: readonly string[] | null,
): PageMark[] {
  const ordered = [...sections].sort((a, b) => Number(isNeighbour(a, focus)) - Number(isNeighbour(b, focus)));
  return ordered.flatMap((section) => {
    const soft = isNeighbour(section, focus);
    const region = regionToPage(view, section.region);
    const ink = {
      face: 'condensed-bold',
      colour: soft ? SOFT_INK : TURF_LINE,
      backing: soft ? WHITE : TURF_TINT,
    } as const;
    for (const sizeMm of soft ? [3.6, 2.8] : [6.4, 5, 3.8, 2.9]) {
      const place = findRoomInside(
        room,
        region,
        widthOf(section.id, sizeMm, ink.face),
        sizeMm * HEIGHT_SHARE,
      );
      if (place !== undefined) return putLabel(room, place, section.id, { ...ink, sizeMm });
    }
    return soft
      ? []
      : labelBeside(room, middleOf(region), section.id, { ...ink, sizeMm: 2.9, backing: WHITE }, true);
  });
}

function isNeighbour(section: Section, focus: readonly string[] | null): boolean {
  return focus !== null && !focus.includes(section.id);
}

/** Names of spigots and landmarks beside their symbols. */
export function labelMarks(view: MapView, room: LabelRoom, marks: readonly Mark[]): PageMark[] {
  const ink = { sizeMm: 2.8, face: 'condensed', colour: INK, backing: WHITE } as const;
  return marks.flatMap((mark) => {
    const centre = yardToPage(view, mark.at);
    if (mark.name === '' || !isFree({ ...room, taken: [] }, centredBox(centre, 1, 1))) return [];
    const words = shortenText(mark.name, ink.sizeMm, ink.face, 40);
    const place = findRoomBeside(
      room,
      centre,
      widthOf(words, ink.sizeMm, ink.face),
      ink.sizeMm,
      SYMBOL_RADIUS_MM + 0.6,
    );
    return place === undefined ? [] : putLabel(room, place, words, ink);
  });
}

/** Names of cut-outs and check plots inside them; outside with a leader where they are too small. */
export function labelOutlines(view: MapView, room: LabelRoom, outlines: readonly Outline[]): PageMark[] {
  return outlines.flatMap((outline) => {
    if (outline.kind === 'zone' || outline.kind === 'keep-off' || outline.name === '') return [];
    const region = outlineToPage(view, outline);
    const ink = { sizeMm: 2.9, face: 'condensed', colour: INK, backing: WHITE } as const;
    const { widthMm } = boundsOf(region);
    for (const words of [outline.name, shortenText(outline.name, ink.sizeMm, ink.face, widthMm * 0.85)]) {
      if ([...words].length < Math.min(5, [...outline.name].length)) continue;
      const place = findRoomInside(
        room,
        region,
        widthOf(words, ink.sizeMm, ink.face),
        ink.sizeMm * HEIGHT_SHARE,
      );
      if (place !== undefined) return putLabel(room, place, words, ink);
    }
    return labelBeside(
      room,
      middleOf(region),
      shortenText(outline.name, ink.sizeMm, ink.face, 34),
      ink,
      true,
    );
  });
}

/** Zone names, once each, where the numbers have left room. */
export function labelZones(view: MapView, room: LabelRoom, outlines: readonly Outline[]): PageMark[] {
  const ink = { sizeMm: 3.2, face: 'condensed', colour: TURF_LINE, backing: TURF_TINT } as const;
  return outlines.flatMap((outline) => {
    if (outline.kind !== 'zone') return [];
    const region = outlineToPage(view, outline);
    const words = shortenText(
      outline.name,
      ink.sizeMm,
      ink.face,
      Math.max(20, boundsOf(region).widthMm * 0.8),
    );
    const place = findRoomInside(
      room,
      region,
      widthOf(words, ink.sizeMm, ink.face),
      ink.sizeMm * HEIGHT_SHARE,
    );
    return place === undefined
      ? labelBeside(room, middleOf(region), words, { ...ink, backing: WHITE }, false)
      : putLabel(room, place, words, ink);
  });
}

function labelBeside(
  room: LabelRoom,
  anchor: PagePoint,
  words: string,
  ink: LabelInk,
  leader: boolean,
): PageMark[] {
  if (!isFree({ ...room, taken: [] }, centredBox(anchor, 0.5, 0.5))) return [];
  const place = findRoomBeside(
    room,
    anchor,
    widthOf(words, ink.sizeMm, ink.face),
    ink.sizeMm * HEIGHT_SHARE,
    3,
  );
  if (place === undefined) return [];
  const lead = leader ? [line([anchor, place], pen(SOFT_INK, 0.15))] : [];
  return [...lead, ...putLabel(room, place, words, ink)];
}

/** Words centred on a place, with backing only where something would show through them. */
function putLabel(room: LabelRoom, place: PagePoint, words: string, ink: LabelInk): PageMark[] {
  const box: PageBox = centredBox(place, widthOf(words, ink.sizeMm, ink.face), ink.sizeMm * HEIGHT_SHARE);
  room.taken.push(box);
  const crossed = ink.backing === WHITE || room.lines.some((other) => edgesMeetBox([other], box));
  const backing = crossed ? [shape([boxOutline(growBox(box, -0.1))], ink.backing, null)] : [];
  return [...backing, centredText(place, words, ink)];
}

function widthOf(words: string, sizeMm: number, face: Face): number {
  return textWidthMm(words, sizeMm, face) + 1.2;
}

/** A point inside a region near its middle: of a row of points across it, the one inside nearest the middle. */
function middleOf(region: readonly PageSubpath[]): PagePoint {
  const { xMm, yMm, widthMm, heightMm } = boundsOf(region);
  const middle = { xMm: xMm + widthMm / 2, yMm: yMm + heightMm / 2 };
  for (let ring = 0; ring < 20; ring++) {
    for (let turn = 0; turn < 8; turn++) {
      const point = {
        xMm: middle.xMm + (Math.cos((turn * Math.PI) / 4) * widthMm * ring) / 40,
        yMm: middle.yMm + (Math.sin((turn * Math.PI) / 4) * heightMm * ring) / 40,
      };
      if (insideSubpaths(region, point)) return point;
    }
  }
  return middle;
}
