import { offsetRegions, SightLines } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { HoseGround } from './hoseGround.ts';

/** The ground a hose may lie on: all that is not in a barrier, or nearer to one than the hose keeps off. */
export interface ClearGround {
  /** Past the barriers themselves. */
  readonly past: SightLines;
  /** Past the barriers and what is kept off round them. */
  readonly clear: SightLines;
}

/** How deep a spigot drawn inside its wall may lie there: a roof seen from above hides this much of the ground. */
export const MOST_IN_WALL_M = 1;
/** Barriers and passes are made on grids of a micrometre: a place may lie this far inside an edge it stands on. */
const TOUCH_M = 1e-5;
/** Beside an edge by this much, a place sees along it without touching. */
const BESIDE_M = 1e-9;
/** So many edges are tried for a straight way out of what is kept off. */
const MOST_WAYS_OUT = 64;

/** @param hose its barriers, grown by its clearance with round corners as the kernel makes them */
export function clearGround({
  barriers,
  clearanceM,
}: Pick<HoseGround, 'barriers' | 'clearanceM'>): ClearGround {
  const past = new SightLines(barriers);
  return { past, clear: clearanceM > 0 ? new SightLines(offsetRegions(barriers, clearanceM)) : past };
}

/** Where a hose joins the clear ground: the place itself, or where it gets out of what is kept off. */
export interface Stand {
  readonly at: YardPoint;
  /** The straight way from the place, or from the wall it is drawn in, to there; at least one point. */
  readonly way: readonly YardPoint[];
  /** Length of that way. */
  readonly wayM: number;
}

/**
 * @returns undefined when the place lies inside a barrier, or no straight way leads out of what is kept off
 * Accuracy: 1e-9 m beside the edge, so that the place itself bars no line
 */
export function standAt(
  ground: ClearGround,
  place: YardPoint,
  mostInsideM: number = TOUCH_M,
): Stand | undefined {
  const start = outside(ground.past, place, mostInsideM);
  if (start === undefined) return undefined;
  if (!ground.clear.holds(start)) return { at: start, way: [start], wayM: 0 };
  let tried = 0;
  for (const { edge, at: foot, awayM } of ground.clear.nearest(start)) {
    if (tried++ === MOST_WAYS_OUT) break;
    const at = beside(ground.clear, edge, foot);
    if (at !== undefined && ground.past.isClear(start, at)) return { at, way: [start, at], wayM: awayM };
  }
  return undefined;
}

/** How deep a place lies inside a barrier; 0 outside. */
export function depthInWallM({ past }: ClearGround, place: YardPoint): number {
  if (!past.holds(place)) return 0;
  for (const { awayM } of past.nearest(place)) return awayM;
  return 0;
}

/** The place itself, or when it lies at most so deep inside the nearest place on the edge. */
function outside(lines: SightLines, place: YardPoint, mostInsideM: number): YardPoint | undefined {
  if (!lines.holds(place)) return place;
  for (const { edge, at, awayM } of lines.nearest(place)) {
    return awayM > mostInsideM ? undefined : beside(lines, edge, at);
  }
  return undefined;
}

/** A place on an edge, moved off it by a hair to where nothing is. */
function beside(lines: SightLines, edge: number, { xM, yM }: YardPoint): YardPoint | undefined {
  const corner = lines.corners[edge];
  if (corner === undefined) return undefined;
  const { at, after } = corner;
  // The barrier is on the left of its edge; at a corner, or where barriers touch, another way may be needed.
  const rightRad = Math.atan2(after.yM - at.yM, after.xM - at.xM) - Math.PI / 2;
  for (let eighth = 0; eighth < 16; eighth++) {
    const rad = rightRad + ((eighth % 2 === 0 ? 1 : -1) * Math.ceil(eighth / 2) * Math.PI) / 8;
    const moved = { xM: xM + BESIDE_M * Math.cos(rad), yM: yM + BESIDE_M * Math.sin(rad) };
    if (!lines.holds(moved)) return moved;
  }
  return undefined;
}
