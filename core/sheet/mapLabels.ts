import type { Section } from '../sections/index.ts';
import type { PagePoint } from '../spaces.ts';
import type { Mark, Outline } from '../yard.ts';
import type { ResolvedZone } from '../zones/index.ts';
import {
  boxOutline,
  centredText,
  findCommonBox,
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
import { boundsOf, insideSubpaths } from './pageGeometry.ts';
import type { PageColour, PageMark, PageSubpath } from './page.ts';

/** Line height taken for a label, as a share of its size. */
const HEIGHT_SHARE = 1.05;

/** A name shortened below this many characters says too little inside its outline; it goes beside it whole. */
const LEAST_SHORTENED = 7;

/** A name no longer than this is better whole beside its outline than shortened in it. */
const WHOLE_BESIDE_MM = 22;

interface LabelInk {
  readonly sizeMm: number;
  readonly face: Face;
  readonly colour: PageColour;
  /** What shows behind the words, so that they read over hatch and lines; 'ground' = as the ground there is. */
  readonly backing: PageColour | 'ground';
}

/** Sizes tried for a section's id, with the lines it may cross: rather smaller than across a pass. */
const SECTION_TRIES = [
  [6.4, 0],
  [5, 0],
  [3.8, 0],
  [5, 9],
  [3.8, 9],
  [2.9, 9],
] as const;
const NEIGHBOUR_TRIES = [
  [3.6, 9],
  [2.8, 9],
] as const;

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
    for (const [sizeMm, mostCrossed] of soft ? NEIGHBOUR_TRIES : SECTION_TRIES) {
      const widthMm = widthOf(section.id, sizeMm, ink.face);
      const place = findRoomInside(room, region, widthMm, sizeMm * HEIGHT_SHARE, mostCrossed);
      if (place !== undefined) return putLabel(room, place, section.id, { ...ink, sizeMm });
    }
    return soft ? [] : labelBeside(room, region, section.id, { ...ink, sizeMm: 2.9, backing: WHITE });
  });
}

function isNeighbour(section: Section, focus: readonly string[] | null): boolean {
  return focus !== null && !focus.includes(section.id);
}

/** Names of spigots and landmarks beside their symbols. */
export function labelMarks(view: MapView, room: LabelRoom, marks: readonly Mark[]): PageMark[] {
  const ink = { sizeMm: 2.8, face: 'condensed', colour: INK, backing: 'ground' } as const;
  return marks.flatMap((mark) => {
    const centre = yardToPage(view, mark.at);
    if (mark.name === '' || !isFree({ ...room, taken: [] }, centredBox(centre, 1, 1))) return [];
    const words = shortenText(mark.name, ink.sizeMm, ink.face, 40);
    const symbol = centredBox(centre, 2 * SYMBOL_RADIUS_MM, 2 * SYMBOL_RADIUS_MM);
    const place = findRoomBeside(room, symbol, widthOf(words, ink.sizeMm, ink.face), ink.sizeMm);
    return place === undefined ? [] : putLabel(room, place, words, ink);
  });
}

/** Names of cut-outs and check plots inside them; outside with a leader where they are too small. */
export function labelOutlines(view: MapView, room: LabelRoom, outlines: readonly Outline[]): PageMark[] {
  return outlines.flatMap((outline) => {
    if (outline.kind === 'zone' || outline.kind === 'keep-off' || outline.name === '') return [];
    const region = outlineToPage(view, outline);
    const ink = { sizeMm: 2.9, face: 'condensed', colour: INK, backing: WHITE } as const;
    const shown = findCommonBox(boundsOf(region), room.frame);
    if (shown === undefined) return [];
    const shortened = shortenText(outline.name, ink.sizeMm, ink.face, shown.widthMm * 0.85);
    const wholeMm = textWidthMm(outline.name, ink.sizeMm, ink.face);
    for (const words of [outline.name, shortened]) {
      const cut = words !== outline.name;
      if (cut && ([...words].length < LEAST_SHORTENED || wholeMm <= WHOLE_BESIDE_MM)) continue;
      const place = findRoomInside(
        room,
        region,
        widthOf(words, ink.sizeMm, ink.face),
        ink.sizeMm * HEIGHT_SHARE,
      );
      if (place !== undefined) return putLabel(room, place, words, ink);
    }
    return labelBeside(room, region, shortenText(outline.name, ink.sizeMm, ink.face, 34), ink);
  });
}

/** Zone names, once each, on the zone's own turf where the numbers have left room: never over the house in it. */
export function labelZones(view: MapView, room: LabelRoom, zones: readonly ResolvedZone[]): PageMark[] {
  const ink = { sizeMm: 3.2, face: 'condensed', colour: TURF_LINE, backing: TURF_TINT } as const;
  return zones.flatMap((zone) => {
    if (zone.turf.length === 0) return [];
    const region = zone.turf.flatMap((part) => regionToPage(view, part));
    const words = shortenText(
      zone.name,
      ink.sizeMm,
      ink.face,
      Math.min(60, Math.max(20, boundsOf(region).widthMm * 0.8)),
    );
    const place = findRoomInside(
      room,
      region,
      widthOf(words, ink.sizeMm, ink.face),
      ink.sizeMm * HEIGHT_SHARE,
    );
    return place === undefined
      ? labelBeside(room, region, words, { ...ink, backing: WHITE })
      : putLabel(room, place, words, ink);
  });
}

/** Words next to a region that has no room for them, with a leader into it. */
function labelBeside(
  room: LabelRoom,
  region: readonly PageSubpath[],
  words: string,
  ink: LabelInk,
): PageMark[] {
  const inside = middleOf(region);
  const shown = findCommonBox(boundsOf(region), room.frame);
  if (shown === undefined || !isFree({ ...room, taken: [] }, centredBox(inside, 0.5, 0.5))) return [];
  // A large region is labelled next to its middle, a small one next to its edge.
  const thing = centredBox(inside, Math.min(30, shown.widthMm), Math.min(30, shown.heightMm));
  const widthMm = widthOf(words, ink.sizeMm, ink.face);
  const place = findRoomBeside(room, thing, widthMm, ink.sizeMm * HEIGHT_SHARE);
  if (place === undefined) return [];
  return [
    line([inside, place], pen(SOFT_INK, 0.15)),
    ...putLabel(room, place, words, { ...ink, backing: 'ground' }),
  ];
}

/** Words centred on a place, backed by the ground's own colour only where a line would show through them. */
function putLabel(room: LabelRoom, place: PagePoint, words: string, ink: LabelInk): PageMark[] {
  const box: PageBox = centredBox(place, widthOf(words, ink.sizeMm, ink.face), ink.sizeMm * HEIGHT_SHARE);
  room.taken.push(box);
  const onTurf = insideSubpaths(room.turf, place);
  const backing = ink.backing === 'ground' ? (onTurf ? TURF_TINT : WHITE) : ink.backing;
  const crossed = backing === WHITE || room.lines.countMeeting(box) > 0;
  return [
    ...(crossed ? [shape([boxOutline(growBox(box, -0.1))], backing, null)] : []),
    centredText(place, words, ink),
  ];
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
