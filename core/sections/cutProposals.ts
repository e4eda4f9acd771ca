import { type Chord, findChords } from './chords.ts';
import type { CutDirection } from './cutDirections.ts';
import { type Facing, levelForAreaM, stepForAreaM } from './facing.ts';
import { lengthAndSlope, partingRuns } from './partingRuns.ts';
import { areaBelowCutM2 } from './splitRegion.ts';

/** A cut that should leave `belowM2` below it: the chords `first` to `last` of the line at `levelM`. */
export interface CutProposal {
  readonly facing: Facing;
  readonly direction: CutDirection;
  readonly levelM: number;
  readonly chords: readonly Chord[];
  readonly target: CutTarget;
  /** Length, made longer for what makes a cut worse: off the lanes' direction, or leaving a narrow neck. */
  readonly costM: number;
}

/** What should lie below the cut, and a name for it that the caller understands. */
export interface CutTarget {
  readonly belowM2: number;
  readonly name: number;
}

/** Cuts neither along nor square to the lanes are worth this much less. */
const OFF_LANES_FACTOR = 1.1;
/** A border nearer than a swath to a corner leaves a neck no pass fits; each is worth this part of its length. */
const NECK_PART = 0.15;
/** Levels looked at per direction when single chords are tried; more are thinned out evenly. */
const MOST_LEVELS = 250;

/** Cuts by whole lines: every chord of the line at the exact level for each target. */
export function wholeLineCuts(
  facing: Facing,
  direction: CutDirection,
  targets: readonly CutTarget[],
  swathM: number,
): CutProposal[] {
  return targets.flatMap((target) => {
    const levelM = levelForAreaM(facing, target.belowM2);
    const chords = findChords(facing, levelM);
    if (chords === undefined || chords.length === 0) return [];
    return [
      { facing, direction, levelM, chords, target, costM: costOf(facing, direction, levelM, chords, swathM) },
    ];
  });
}

/**
 * Cuts by some neighbouring chords of a line only, for ground that whole lines fall into pieces on.
 * Between two corner levels the chords keep their edges, so each run of chords is tried once there, and its level
 * solved exactly from the area at the middle.
 *
 * @param mostM runs longer than this are not looked at
 * Cost: n^2 in the corners
 */
export function chordCuts(
  facing: Facing,
  direction: CutDirection,
  targets: readonly CutTarget[],
  swathM: number,
  mostM: number,
): CutProposal[] {
  const { levelsM } = facing;
  const step = Math.max(1, levelsM.length / MOST_LEVELS);
  const proposals: CutProposal[] = [];
  for (let place = 0; Math.floor(place) + 1 < levelsM.length; place += step) {
    const fromM = levelsM[Math.floor(place)] as number;
    const toM = levelsM[Math.floor(place) + 1] as number;
    if (toM - fromM < 1e-6) continue;
    const middleM = (fromM + toM) / 2;
    const chords = findChords(facing, middleM) ?? [];
    for (const run of partingRuns(chords, mostM)) {
      for (const { target, levelM } of levelsWithin(facing, run, middleM, targets, fromM, toM)) {
        const there = findChords(facing, levelM);
        const start = there?.findIndex((chord) => chord.start.edge === run[0]?.start.edge) ?? -1;
        const moved = start < 0 ? [] : (there as Chord[]).slice(start, start + run.length);
        if (moved.length !== run.length) continue;
        proposals.push({
          facing,
          direction,
          levelM,
          chords: moved,
          target,
          costM: costOf(facing, direction, levelM, moved, swathM),
        });
      }
    }
  }
  return proposals;
}

function levelsWithin(
  facing: Facing,
  run: readonly Chord[],
  middleM: number,
  targets: readonly CutTarget[],
  fromM: number,
  toM: number,
): { target: CutTarget; levelM: number }[] {
  const middleM2 = areaBelowCutM2(facing, run);
  if (middleM2 === undefined) return [];
  const [lengthM, slope] = lengthAndSlope(run);
  return targets.flatMap((target) => {
    const levelM = middleM + stepForAreaM(target.belowM2 - middleM2, lengthM, slope);
    return levelM > fromM && levelM < toM ? [{ target, levelM }] : [];
  });
}

function costOf(
  facing: Facing,
  direction: CutDirection,
  levelM: number,
  chords: readonly Chord[],
  swathM: number,
): number {
  let lengthM = 0;
  for (const { start, end } of chords) lengthM += end.vM - start.vM;
  let necks = 0;
  for (const corner of facing.corners) {
    const apartM = Math.abs(corner.uM - levelM);
    if (apartM >= swathM || !corner.reflex) continue;
    const isOver = chords.some(
      ({ start, end }) => corner.vM > start.vM + apartM && corner.vM < end.vM - apartM,
    );
    if (isOver) necks++;
  }
  return lengthM * (direction.aligned ? 1 : OFF_LANES_FACTOR) + necks * lengthM * NECK_PART;
}
