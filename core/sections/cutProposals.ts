import { type Chord, chordsAt, findChords } from './chords.ts';
import type { CutDirection } from './cutDirections.ts';
import { type Facing, levelForAreaM, stepForAreaM } from './facing.ts';
import { lengthAndSlope, middleOf, partingRuns } from './partingRuns.ts';
import { areaBelowRunM2 } from './runArea.ts';
import { solveCut } from './solveCut.ts';
import { CHORD_WORK, isSpent, SOLVE_WORK, spend, type Work } from './work.ts';

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
/** Levels looked at per direction when single chords are tried, and corners in all; more are thinned out evenly. */
const MOST_LEVELS = 250;
const MOST_CORNERS_LOOKED_AT = 2e5;

/** Cuts by whole lines: every chord of the line at the exact level for each target. */
export function wholeLineCuts(
  facing: Facing,
  direction: CutDirection,
  targets: readonly CutTarget[],
  swathM: number,
  work: Work,
): CutProposal[] {
  const { corners, levelsM } = facing;
  return targets.flatMap((target) => {
    if (isSpent(work)) return [];
    spend(work, corners.length * Math.log2(levelsM.length));
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
 * @param work looked after each level; once spent, what was found is returned
 * Cost: for each level the corners, and for each run its chords and the holes
 */
export function chordCuts(
  facing: Facing,
  direction: CutDirection,
  targets: readonly CutTarget[],
  swathM: number,
  mostM: number,
  work: Work,
): CutProposal[] {
  const { corners, levelsM, ringM2 } = facing;
  const step = Math.max(1, levelsM.length / Math.min(MOST_LEVELS, MOST_CORNERS_LOOKED_AT / corners.length));
  const levelAt = (place: number): number =>
    levelsM[Math.min(Math.max(0, Math.floor(place)), levelsM.length - 1)] as number;
  const proposals: CutProposal[] = [];
  for (let place = 0; Math.floor(place) + 1 < levelsM.length; place += step) {
    const [fromM, toM] = [levelAt(place), levelAt(Math.floor(place) + 1)];
    if (toM - fromM < 1e-6) continue;
    if (isSpent(work)) break;
    spend(work, corners.length);
    const middleM = (fromM + toM) / 2;
    for (const run of partingRuns(findChords(facing, middleM) ?? [], mostM)) {
      spend(work, CHORD_WORK * (run.length + 1) + ringM2.length);
      for (const { target, levelM } of levelsFor(facing, run, middleM, targets)) {
        const isBetween = levelM > fromM && levelM < toM;
        // Past a corner the chords change edges, which matters only where the levels beyond are not looked at.
        const isNear = step > 1 && levelM > levelAt(place - step) && levelM < levelAt(place + step + 1);
        if (!isBetween && !isNear) continue;
        spend(work, (isBetween ? 1 : SOLVE_WORK) * corners.length);
        const chords = isBetween ? chordsAt(run, levelM) : solveCut(facing, middleOf(run), target.belowM2);
        if (chords === undefined) continue;
        const costM = costOf(facing, direction, levelM, chords, swathM);
        proposals.push({ facing, direction, levelM, chords, target, costM });
      }
    }
  }
  return proposals;
}

function levelsFor(
  facing: Facing,
  run: readonly Chord[],
  levelM: number,
  targets: readonly CutTarget[],
): { target: CutTarget; levelM: number }[] {
  const isM2 = areaBelowRunM2(facing, levelM, run);
  if (isM2 === undefined) return [];
  const [lengthM, slope] = lengthAndSlope(run);
  return targets.map((target) => {
    return { target, levelM: levelM + stepForAreaM(target.belowM2 - isM2, lengthM, slope) };
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
