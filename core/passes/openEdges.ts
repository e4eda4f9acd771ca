import { distanceM } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';

/** An edge this near to square to the lanes is one they may end on: sine of 1 degree. */
const SQUARE_SINE = 0.0175;
/** Both ends of an edge the first or last lane may run along lie this near to the rim, as a part of a swath. */
const RIM_PART = 0.02;
/** A perimeter pass meeting an open edge at less than 80 degrees would throw too much over it. */
const ACUTE_COSINE = 0.17;

/** Which edges of a section need no perimeter pass. */
export interface OpenEdges {
  /** One for each edge of the outer ring, beginning with that from its first corner. */
  readonly isOpen: readonly boolean[];
  /** How far across the lanes the open rims lie, where there are any. */
  readonly lowM: number | null;
  readonly highM: number | null;
}

/**
 * Edges that lanes can treat up to by themselves: those they end on squarely, and the outermost ones they run along.
 * Every other edge has a perimeter pass, and so has one edge at least of every corner that sticks into the ground:
 * then nothing a lane treats reaches round a corner. Own work.
 *
 * @param laneRad direction of the lanes, counter-clockwise from east
 * @returns undefined when no edge is open
 */
export function findOpenEdges(region: Region, laneRad: number, swathM: number): OpenEdges | undefined {
  const dx = Math.cos(laneRad);
  const dy = Math.sin(laneRad);
  const ring = region.outer;
  const at = (i: number): YardPoint => ring[(i + ring.length) % ring.length] as YardPoint;
  const acrossM = (p: YardPoint): number => p.yM * dx - p.xM * dy;
  const lowM = Math.min(...ring.map(acrossM));
  const highM = Math.max(...ring.map(acrossM));
  if (highM - lowM < swathM) return undefined;
  const onRim = (i: number, rimM: number): boolean =>
    Math.max(Math.abs(acrossM(at(i)) - rimM), Math.abs(acrossM(at(i + 1)) - rimM)) <= RIM_PART * swathM;
  const ways = ring.map((a, i) => unit(a, at(i + 1)));
  const isRim = ring.map((_, i) => onRim(i, lowM) || onRim(i, highM));
  const isOpen = ways.map(
    (way, i) => isRim[i] === true || Math.abs(way.xM * dx + way.yM * dy) <= SQUARE_SINE,
  );
  // Closing an edge may spoil its neighbour, so until nothing changes.
  for (let isSettled = false; !isSettled; ) {
    isSettled = true;
    for (let i = 0; i < ring.length; i++) {
      const before = (i + ring.length - 1) % ring.length;
      if (
        !spoils(ways[before] as YardPoint, ways[i] as YardPoint, isOpen[before] === true, isOpen[i] === true)
      )
        continue;
      isOpen[before] = false;
      isOpen[i] = false;
      isSettled = false;
    }
  }
  if (!isOpen.includes(true)) return undefined;
  const isOpenRim = (rimM: number): boolean => isOpen.some((open, i) => open && onRim(i, rimM));
  return { isOpen, lowM: isOpenRim(lowM) ? lowM : null, highM: isOpenRim(highM) ? highM : null };
}

/** Whether the corner between two edges, walked with the ground on the left, keeps them from being open. */
function spoils(before: YardPoint, after: YardPoint, isBeforeOpen: boolean, isAfterOpen: boolean): boolean {
  const turn = before.xM * after.yM - before.yM * after.xM;
  if (isBeforeOpen && isAfterOpen) return turn < -1e-9;
  if (!isBeforeOpen && !isAfterOpen) return false;
  // Turning left by more than a right angle and a bit: the corner is acute.
  return turn > 0 && before.xM * after.xM + before.yM * after.yM < -ACUTE_COSINE;
}

function unit(a: YardPoint, b: YardPoint): YardPoint {
  const lengthM = distanceM(a, b) || 1;
  return { xM: (b.xM - a.xM) / lengthM, yM: (b.yM - a.yM) / lengthM };
}
