import { regionAreaM2 } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import { type Chord, findChords } from './chords.ts';
import { type Facing, stepForAreaM } from './facing.ts';
import { lengthAndSlope, partingRuns } from './partingRuns.ts';
import { areaBelowRunM2 } from './runArea.ts';

/** Steps taken before a cut is given up; each is exact until the cut comes to another edge. */
const MOST_STEPS = 12;
/** The area is right within this part of the region's. */
const AREA_PART = 1e-11;

/**
 * The cut square to `facing.normal` that leaves `belowM2` below it, found by sliding the one through a place: of
 * the runs of a line that part the ground, the one whose middle is nearest that place.
 *
 * @returns undefined where sliding leads nowhere
 * Source: Newton's method; between two corners its step is the exact root (see `levelForAreaM`). Own work.
 */
export function solveCut(facing: Facing, through: YardPoint, belowM2: number): Chord[] | undefined {
  const { normal, region } = facing;
  const origin = region.outer[0] ?? through;
  const [x, y] = [through.xM - origin.xM, through.yM - origin.yM];
  const vM = y * normal.x - x * normal.y;
  let levelM = x * normal.x + y * normal.y;
  const slackM2 = AREA_PART * regionAreaM2(region);
  const [leastM, mostM] = [facing.levelsM[0] ?? 0, facing.levelsM.at(-1) ?? 0];
  for (let step = 0; step < MOST_STEPS; step++) {
    const run = runNearest(findChords(facing, levelM) ?? [], vM);
    const isM2 = run && areaBelowRunM2(facing, levelM, run);
    if (run === undefined || isM2 === undefined) return undefined;
    if (Math.abs(belowM2 - isM2) <= slackM2) return run;
    const nextM = levelM + stepForAreaM(belowM2 - isM2, ...lengthAndSlope(run));
    // A step from where the ground is narrow may lead right out of it: then half the way to its end.
    levelM = nextM <= leastM ? (levelM + leastM) / 2 : nextM >= mostM ? (levelM + mostM) / 2 : nextM;
  }
  return undefined;
}

function runNearest(chords: readonly Chord[], vM: number): Chord[] | undefined {
  let nearest: Chord[] | undefined;
  let leastM = Infinity;
  for (const run of partingRuns(chords, Infinity)) {
    const [start, end] = [run[0]?.start.vM ?? 0, run.at(-1)?.end.vM ?? 0];
    const apartM = Math.abs((start + end) / 2 - vM);
    if (apartM < leastM) [nearest, leastM] = [run, apartM];
  }
  return nearest;
}
