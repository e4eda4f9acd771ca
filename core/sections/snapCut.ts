import { distanceM, regionAreaM2 } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import { type Chord, type Crossing, findChords } from './chords.ts';
import { faceAlong, type Unturned } from './facing.ts';
import { type Halves, splitRegion } from './splitRegion.ts';
import { type TapeSide, TapeSides } from './TapeSides.ts';

/** What a cut moved to marks must still leave on its two sides. */
export interface CutRoom {
  readonly belowM2: number;
  readonly leastBelowM2: number;
  readonly mostBelowM2: number;
}

export interface SnappedCut {
  readonly halves: Halves;
  readonly chords: readonly Chord[];
}

/** Cut ends this near to where they were meant are there. */
const SAME_M = 1e-6;
/** Lines tried, those first that change the areas least. */
const MOST_TRIES = 6;
/** What turning the line counts beside the ground it sweeps. */
const TURN_PART = 1e-3;
/** Shorter edges are steps of a curve, and have no mark to set a tape on. */
const LEAST_EDGE_MARKS = 2;
/** Where sides are known, an edge off them is a cut line or a step of a curve; those are shorter than this. */
const LEAST_LINE_M = 1;

const NO_SIDES = new TapeSides([]);

/**
 * A cut moved so that both its outer ends stand on tape marks: whole multiples of `markM` from an end of the side
 * they are on. The line stays straight; it may turn a little.
 *
 * @param chords neighbouring runs of one line, as cut
 * @param sides what marks are counted along, an edge on none of them being a cut line, counted from its own ends, or
 *   a step of a curve, where one place is as good as another; left out, every edge is counted from its own corners
 * @returns the cut whose areas change least, or undefined when none leaves each side its room
 * Accuracy: ends on their marks to 1e-6 m
 * Cost: a turn of the region and a split for each line tried
 */
export function snapCut(
  unturned: Unturned,
  chords: readonly Chord[],
  room: CutRoom,
  markM: number,
  sides: TapeSides = NO_SIDES,
): SnappedCut | undefined {
  const first = chords[0];
  const last = chords.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const lengthM = distanceM(first.start.at, last.end.at);
  const [x, y] = [
    (last.end.at.xM - first.start.at.xM) / lengthM,
    (last.end.at.yM - first.start.at.yM) / lengthM,
  ];
  // A point moved this far across the line sweeps half its length's worth of ground.
  const across = (from: YardPoint, to: YardPoint): number => (to.xM - from.xM) * y - (to.yM - from.yM) * x;
  const lines = marksOn(first.start, markM, sides).flatMap((start) =>
    marksOn(last.end, markM, sides).map((end) => {
      const [startM, endM] = [across(first.start.at, start), across(last.end.at, end)];
      const sweptM2 = (lengthM / 2) * (startM + endM);
      // Of two as good, the one that turns the line less.
      const worseM2 = Math.abs(sweptM2) + TURN_PART * lengthM * Math.abs(startM - endM);
      return { start, end, sweptM2, worseM2 };
    }),
  );
  const inOrder = lines
    .filter(({ sweptM2 }) => {
      const belowM2 = room.belowM2 + sweptM2;
      const hairM2 = 0.01 * Math.abs(sweptM2);
      return belowM2 > room.leastBelowM2 - hairM2 && belowM2 < room.mostBelowM2 + hairM2;
    })
    .sort((a, b) => a.worseM2 - b.worseM2);
  for (const { start, end } of inOrder.slice(0, MOST_TRIES)) {
    const snapped = cutBetween(unturned, start, end, chords.length);
    if (snapped === undefined) continue;
    const belowM2 = regionAreaM2(snapped.halves.below);
    if (belowM2 >= room.leastBelowM2 && belowM2 <= room.mostBelowM2) return snapped;
  }
  return undefined;
}

/** The marks on either hand of a cut's end, counted from either end of the sides its edge lies on. */
function marksOn({ edge, at }: Crossing, markM: number, sides: TapeSides): YardPoint[] {
  const [a, b] = [edge.at, edge.next.at];
  const edgeM = distanceM(a, b);
  const under = sides.under(a, b);
  if (under.length === 0 && !sides.isEmpty && edgeM < LEAST_LINE_M) return [at];
  const counted = under.length === 0 ? [{ from: a, to: b }] : under;
  const [x, y] = [(b.xM - a.xM) / edgeM, (b.yM - a.yM) / edgeM];
  return counted.flatMap((side) =>
    marksAlong(side, at, markM).flatMap((mark): YardPoint[] => {
      // Back onto the edge itself: the side may be some grid steps off it.
      const placeM = (mark.xM - a.xM) * x + (mark.yM - a.yM) * y;
      if (placeM <= SAME_M || placeM >= edgeM - SAME_M) return [];
      return [{ xM: a.xM + x * placeM, yM: a.yM + y * placeM }];
    }),
  );
}

function marksAlong({ from, to }: TapeSide, at: YardPoint, markM: number): YardPoint[] {
  const lengthM = distanceM(from, to);
  if (lengthM < LEAST_EDGE_MARKS * markM) return [];
  const alongM = distanceM(from, at);
  const places = [
    Math.floor(alongM / markM) * markM,
    Math.ceil(alongM / markM) * markM,
    lengthM - Math.floor((lengthM - alongM) / markM) * markM,
    lengthM - Math.ceil((lengthM - alongM) / markM) * markM,
  ];
  return places.map((placeM) => ({
    xM: from.xM + ((to.xM - from.xM) * placeM) / lengthM,
    yM: from.yM + ((to.yM - from.yM) * placeM) / lengthM,
  }));
}

/** The cut along the line between two places on the ground's edge, if it crosses as many runs of ground. */
function cutBetween(
  unturned: Unturned,
  start: YardPoint,
  end: YardPoint,
  runs: number,
): SnappedCut | undefined {
  const lengthM = distanceM(start, end);
  // The ground below a cut lies to the right of its way from start to end.
  const normal = { x: (end.yM - start.yM) / lengthM, y: -(end.xM - start.xM) / lengthM };
  const facing = faceAlong(unturned, normal);
  const origin = unturned.region.outer[0] ?? start;
  const levelM = (start.xM - origin.xM) * normal.x + (start.yM - origin.yM) * normal.y;
  const all = findChords(facing, levelM) ?? [];
  const from = all.findIndex((chord) => distanceM(chord.start.at, start) < SAME_M);
  const chords = from < 0 ? [] : all.slice(from, from + runs);
  const last = chords.at(-1);
  if (chords.length < runs || last === undefined || distanceM(last.end.at, end) >= SAME_M) return undefined;
  const halves = splitRegion(facing, chords);
  return halves && { halves, chords };
}
