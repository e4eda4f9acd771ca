import { tracedRing } from '../curves/index.ts';
import { ringBounds, windIn } from '../kernel/index.ts';
import { type CutLine, tapeMarkM } from '../sections/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Outline, Traced, TracedCorner, Yard } from '../yard.ts';

/**
 * How to find one end of a cut line with a tape: so far along a straight edge from a corner of it or, where
 * the end lies on other cut lines, so far along one of those from its flag on the edge.
 */
export interface FlagTape {
  readonly flag: YardPoint;
  readonly corner: YardPoint;
  readonly alongM: number;
  /** 'NW corner': on which side of its outline the corner lies; or 'flag on edge'. */
  readonly cornerName: string;
  /** Whose corner it is; null for a flag. */
  readonly outline: Outline | null;
}

/** An end this near an edge is on it; the planners place ends on the treated ground's edge to the kernel grid. */
const ON_EDGE_M = 0.02;

/** Shorter edges are steps of a curve set corner by corner: they cannot be found on the ground. */
const LEAST_EDGE_M = 1;

/** Nearer than this to a mark, a distance is set on it. */
const ON_MARK_M = 0.002;

const EDGE_KINDS: readonly Outline['kind'][] = ['zone', 'building', 'hardscape', 'bed', 'water', 'keep-off'];

/** The tape distance of each end of a cut line, from end first; undefined where it meets nothing straight. */
export function findFlagTapes(
  yard: Yard,
  cutLine: CutLine,
  cutLines: readonly CutLine[],
): readonly [FlagTape | undefined, FlagTape | undefined] {
  return [findTape(yard, cutLine.from, cutLines), findTape(yard, cutLine.to, cutLines)];
}

function findTape(yard: Yard, flag: YardPoint, cutLines: readonly CutLine[]): FlagTape | undefined {
  return findTapeOnEdge(yard, flag) ?? findTapeOnLine(yard, flag, cutLines);
}

/** From the nearest flag on an edge that lies on one straight line of cuts with this one. */
function findTapeOnLine(yard: Yard, flag: YardPoint, cutLines: readonly CutLine[]): FlagTape | undefined {
  let nearest: FlagTape | undefined;
  for (const { from, to } of cutLines) {
    for (const [start, far] of [
      [from, to],
      [to, from],
    ] as const) {
      const alongM = Math.hypot(flag.xM - start.xM, flag.yM - start.yM);
      if (alongM <= ON_EDGE_M || (nearest !== undefined && alongM >= nearest.alongM)) continue;
      const lengthM = Math.hypot(far.xM - start.xM, far.yM - start.yM);
      const aheadM =
        ((flag.xM - start.xM) * (far.xM - start.xM) + (flag.yM - start.yM) * (far.yM - start.yM)) / lengthM;
      // On the line through both ends and ahead of the start: as far away as it is ahead.
      if (Math.abs(alongM - aheadM) > (ON_EDGE_M * ON_EDGE_M) / (2 * alongM)) continue;
      if (findTapeOnEdge(yard, start) === undefined) continue;
      nearest = { flag, corner: start, alongM, cornerName: 'flag on edge', outline: null };
    }
  }
  return nearest;
}

/**
 * From a corner whose distance a tape can set, if there is one; else, and among those, from the nearest corner of the
 * kind that comes first: two lawns may share the edge a flag stands on.
 */
function findTapeOnEdge(yard: Yard, flag: YardPoint): FlagTape | undefined {
  const markM = tapeMarkM(yard.details.unitSystem);
  const isOnMark = ({ alongM }: FlagTape): boolean =>
    Math.abs(alongM - Math.round(alongM / markM) * markM) <= ON_MARK_M;
  const tapes = EDGE_KINDS.flatMap((kind) => {
    const outlines = yard.outlines.filter((outline) => outline.kind === kind);
    const ofKind = outlines.flatMap((outline) =>
      [outline.outer, ...outline.holes].flatMap((traced) => findTapesOnRing(outline, traced, flag)),
    );
    return ofKind.sort((one, other) => one.alongM - other.alongM);
  });
  return tapes.find(isOnMark) ?? tapes[0];
}

/** Straight edges alone: the corners that stand for a curve are nowhere on the ground. */
function findTapesOnRing(outline: Outline, traced: Traced, flag: YardPoint): readonly FlagTape[] {
  if (traced.kind !== 'corners') return [];
  const { corners } = traced;
  for (const [i, a] of corners.entries()) {
    if (a.run !== undefined) continue;
    const b = corners[(i + 1) % corners.length] as TracedCorner;
    const lengthM = Math.hypot(b.xM - a.xM, b.yM - a.yM);
    if (lengthM < LEAST_EDGE_M) continue;
    const ux = (b.xM - a.xM) / lengthM;
    const uy = (b.yM - a.yM) / lengthM;
    const alongM = (flag.xM - a.xM) * ux + (flag.yM - a.yM) * uy;
    const offM = Math.abs((flag.yM - a.yM) * ux - (flag.xM - a.xM) * uy);
    if (offM > ON_EDGE_M || alongM < -ON_EDGE_M || alongM > lengthM + ON_EDGE_M) continue;
    const wind = (corner: YardPoint): string => windIn(ringBounds(tracedRing(outline.outer)), corner).letters;
    return [
      { corner: a, alongM: Math.max(0, alongM) },
      { corner: b, alongM: Math.max(0, lengthM - alongM) },
    ].map((tape) => ({ ...tape, flag, cornerName: `${wind(tape.corner)} corner`, outline }));
  }
  return [];
}
