import { distanceM, regionAreaM2 } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Chord } from './chords.ts';
import { edgeMarks } from './edgeMarks.ts';
import type { Facing } from './facing.ts';
import { type Halves, splitRegion } from './splitRegion.ts';
import { TapeSides } from './TapeSides.ts';

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

/** Lines tried for each run, those first that change the areas least. */
const MOST_TRIES = 8;
/** What turning the line counts beside the ground it sweeps. */
const TURN_PART = 1e-3;
/** A corner of the ground this near to a cut is on it. */
const ON_LINE_M = 1e-6;

const NO_SIDES = new TapeSides([]);

/**
 * A cut moved so that every end of it stands on a tape mark: a whole multiple of `markM` from an end of the side it is
 * on, or that end itself. Each run of ground it crosses stays straight; each may turn a little by itself.
 *
 * @param chords neighbouring runs of one line, as cut
 * @param sides what marks are counted along, an edge on none of them being a cut line, counted from its own ends, or
 *   a step of a curve, where one place is as good as another; left out, every edge is counted from its own corners
 * @returns the cut whose areas change least, or undefined when none leaves each side its room
 * Accuracy: ends on their marks to 1e-6 m
 * Cost: the corners of the region for each line tried, and one split of it
 */
export function snapCut(
  facing: Facing,
  chords: readonly Chord[],
  room: CutRoom,
  markM: number,
  sides: TapeSides = NO_SIDES,
): SnappedCut | undefined {
  // The longest run is moved last: it makes good what the others changed.
  const inOrder = chords.toSorted((a, b) => chordM(a) - chordM(b));
  const moved = new Map<Chord, Chord>();
  let sweptM2 = 0;
  for (const chord of inOrder) {
    const best = bestMove(facing, chord, sweptM2, room, markM, sides);
    if (best === undefined) return undefined;
    moved.set(chord, best.chord);
    sweptM2 += best.sweptM2;
  }
  const snapped = chords.map((chord) => moved.get(chord) as Chord);
  const halves = splitRegion(facing, snapped);
  if (halves === undefined) return undefined;
  const belowM2 = regionAreaM2(halves.below);
  if (belowM2 < room.leastBelowM2 || belowM2 > room.mostBelowM2) return undefined;
  return { halves, chords: snapped };
}

interface Move {
  readonly chord: Chord;
  /** How much ground it gives to the part below. */
  readonly sweptM2: number;
}

function bestMove(
  facing: Facing,
  chord: Chord,
  beforeM2: number,
  room: CutRoom,
  markM: number,
  sides: TapeSides,
): Move | undefined {
  const lengthM = chordM(chord);
  const { start, end } = chord;
  const [x, y] = [(end.at.xM - start.at.xM) / lengthM, (end.at.yM - start.at.yM) / lengthM];
  // A point moved this far across the line sweeps half its length's worth of ground.
  const across = (from: YardPoint, to: YardPoint): number => (to.xM - from.xM) * y - (to.yM - from.yM) * x;
  const lines = edgeMarks(start, markM, sides).flatMap((from) =>
    edgeMarks(end, markM, sides).map((to) => {
      const [startM, endM] = [across(start.at, from), across(end.at, to)];
      const sweptM2 = (lengthM / 2) * (startM + endM);
      // Of two as good, the one that turns the line less.
      const worseM2 = Math.abs(beforeM2 + sweptM2) + TURN_PART * lengthM * Math.abs(startM - endM);
      const movedTo: Chord = { start: { ...start, at: from }, end: { ...end, at: to } };
      return { chord: movedTo, sweptM2, worseM2 };
    }),
  );
  return lines
    .filter(({ sweptM2 }) => {
      const belowM2 = room.belowM2 + beforeM2 + sweptM2;
      const hairM2 = 0.01 * Math.abs(sweptM2);
      return belowM2 > room.leastBelowM2 - hairM2 && belowM2 < room.mostBelowM2 + hairM2;
    })
    .sort((a, b) => a.worseM2 - b.worseM2)
    .slice(0, MOST_TRIES)
    .find((line) => isClear(facing, chord, line.chord));
}

function chordM({ start, end }: Chord): number {
  return distanceM(start.at, end.at);
}

/** Whether no corner of the ground lies between where a run was and where it is to be: it then crosses no edge. */
function isClear({ corners }: Facing, was: Chord, is: Chord): boolean {
  const lengthM = chordM(is);
  if (lengthM < ON_LINE_M) return false;
  const side = ({ start, end }: Chord, at: YardPoint): number =>
    ((end.at.xM - start.at.xM) * (at.yM - start.at.yM) - (end.at.yM - start.at.yM) * (at.xM - start.at.xM)) /
    distanceM(start.at, end.at);
  const [x, y] = [(is.end.at.xM - is.start.at.xM) / lengthM, (is.end.at.yM - is.start.at.yM) / lengthM];
  return corners.every(({ at }) => {
    const offM = side(is, at);
    if (Math.abs(offM) > ON_LINE_M && offM > 0 === side(was, at) > 0) return true;
    const alongM = (at.xM - is.start.at.xM) * x + (at.yM - is.start.at.yM) * y;
    return alongM < ON_LINE_M || alongM > lengthM - ON_LINE_M;
  });
}
