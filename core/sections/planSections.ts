import { radOfBearing } from '../frame/index.ts';
import { distanceM, interiorPoint, regionAreaM2 } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Region } from '../spaces.ts';
import { sum } from '../units/index.ts';
import type { HeldCut, SectionPolicy } from '../yard.ts';
import { borderLines } from './borderLines.ts';
import { type CutPiece, cutPiece } from './cutPiece.ts';
import { type Begun, begunAfter, inFillingOrder, leftUnfilled, NOTHING_BEGUN, shareOf } from './fillLoads.ts';
import { partByHeldCuts } from './heldCuts.ts';
import { orderSections } from './orderSections.ts';
import type { Cut, CutLine, Section } from './section.ts';
import { loadCount } from './share.ts';
import { type TapeSide, TapeSides } from './TapeSides.ts';

/** The ground of one zone that is treated; the regions do not overlap. */
export interface ZoneGround {
  readonly zoneId: string;
  readonly zoneName: string;
  /** 'A' for the first zone; section ids are this and a number. */
  readonly letter: string;
  readonly treated: readonly Region[];
}

export interface SectionRequest {
  /** Ground one load treats. */
  readonly loadAreaM2: number;
  readonly policy: SectionPolicy;
  /** Bearing of the lanes; null = no lanes chosen yet, cuts then follow the longest edge. */
  readonly headingDeg: number | null;
  readonly swathM: number;
  /** Where a tape can set a flag: whole multiples of this from a corner. null = anywhere. */
  readonly markM: number | null;
  /** What marks are counted along; none = every edge is counted from its own corners. */
  readonly tapeSides?: readonly TapeSide[];
  /** Cuts of this zone that stay where they are; absent = none. */
  readonly heldCuts?: readonly HeldCut[];
  /** Of policy 'fewest': what an earlier zone left; absent = nothing. */
  readonly begun?: Begun;
  readonly isCancelled?: () => boolean;
}

export interface ZoneSections {
  /** Numbered in an order to walk them in. */
  readonly sections: readonly Section[];
  readonly cutLines: readonly CutLine[];
  readonly cuts: readonly Cut[];
  /** Ids of the sections in the order in which one load after the other is filled. */
  readonly filling: readonly string[];
  /** The load begun at the end. */
  readonly begun: Begun;
  /** Held cuts that part nothing where they lie. */
  readonly idle: readonly HeldCut[];
}

/** A zone in more sections than this is a typing slip, or a job for a machine. */
export const MOST_SECTIONS = 1000;

/**
 * Cuts a zone into sections, each connected and within one load.
 *
 * The cuts the person holds part the ground first; each part is then cut by itself. Even policy: in as few equal
 * sections as the load allows. Fewest: the load begun is filled up, then load after load, and what is left begins
 * the next.
 *
 * @returns sections that do not overlap and sum to the zone; the straight borders between them
 * Problems: plan/load-below-one-swath-square, plan/too-many-sections, plan/nothing-to-treat, plan/cancelled,
 *   plan/no-connected-cut (ground that no straight cut found parts into connected sections)
 * Accuracy: equal sections agree to 1e-8 of the piece before their cuts are moved to tape marks, which is done only
 *   as far as every load has room; checked in tests/core/sections/planSections.test.ts
 * Cost: about n log n in the corners times the sections for simple ground; n^2 where whole lines will not do
 */
export function planSections(zone: ZoneGround, request: SectionRequest): Result<ZoneSections> {
  const held = partByHeldCuts(zone.treated, request.heldCuts ?? []);
  const problem = findProblem(zone, held.parts, request);
  if (problem !== undefined) return trouble(problem);
  const isCancelled = request.isCancelled ?? (() => false);
  const { swathM, markM, loadAreaM2 } = request;
  const tapeSides = new TapeSides(request.tapeSides ?? []);
  const pieces: CutPiece[] = [];
  let begun = request.begun ?? NOTHING_BEGUN;
  for (const region of inOrder(held.parts)) {
    const lay = { laneRad: laneRadOf(region, request.headingDeg), swathM, markM, tapeSides, loadAreaM2 };
    let piece = cutPiece(shareOf(region, request, begun), lay, isCancelled);
    if (piece === undefined && begun.roomM2 > 0) {
      // No way was found to cut off what fills up the load begun: it is left as it is.
      begun = leftUnfilled(begun);
      piece = cutPiece(shareOf(region, request, begun), lay, isCancelled);
    }
    if (piece === undefined) {
      const where = { thing: zone.zoneName };
      if (isCancelled()) return trouble({ kind: 'plan/cancelled', where, facts: {} });
      const sections = loadCount(shareOf(region, request, begun));
      return trouble({ kind: 'plan/no-connected-cut', where, facts: { sections } });
    }
    pieces.push(piece);
    begun = begunAfter(piece.parts, loadAreaM2, begun);
  }
  const regions = pieces.flatMap((piece) => inFillingOrder(piece.parts).map((part) => part.region));
  const order = orderByPlace(regions);
  const sections = order.map((index, place): Section => {
    const region = regions[index] as Region;
    const areaM2 = regionAreaM2(region);
    return { id: `${zone.letter}${place + 1}`, zoneId: zone.zoneId, zoneName: zone.zoneName, region, areaM2 };
  });
  const filling = regions.map((_, index) => `${zone.letter}${order.indexOf(index) + 1}`);
  const cuts = [
    ...held.cuts.map((cut): Cut => ({ zoneId: zone.zoneId, ...cut })),
    ...pieces.flatMap((piece) =>
      piece.cuts.map(([from, to]): Cut => ({ zoneId: zone.zoneId, from, to, heldId: null })),
    ),
  ];
  const lines = cuts.map(({ from, to }) => [from, to] as const);
  const { idle } = held;
  return ok({ sections, cuts, cutLines: borderLines(lines, sections), filling, begun, idle });
}

function orderByPlace(regions: readonly Region[]): number[] {
  return orderSections(regions.map((region) => interiorPoint(region)));
}

/** One beside the other, so that a load begun on one is filled up near by. */
function inOrder(parts: readonly Region[]): Region[] {
  return orderByPlace(parts).map((index) => parts[index] as Region);
}

function findProblem(
  zone: ZoneGround,
  parts: readonly Region[],
  request: SectionRequest,
): Problem | undefined {
  const where = { thing: zone.zoneName };
  const { loadAreaM2, swathM } = request;
  if (zone.treated.length === 0) return { kind: 'plan/nothing-to-treat', where, facts: {} };
  // Written so that a number that is not one is refused too.
  if (!(loadAreaM2 >= swathM * swathM)) {
    const facts = { capacityM2: loadAreaM2, swathM };
    return { kind: 'plan/load-below-one-swath-square', where, facts };
  }
  const sections = sum(parts.map((region) => loadCount(shareOf(region, request, NOTHING_BEGUN))));
  if (sections <= MOST_SECTIONS) return undefined;
  return { kind: 'plan/too-many-sections', where, facts: { sections, most: MOST_SECTIONS } };
}

/** Lane direction counter-clockwise from east; without a heading, that of the longest edge. */
function laneRadOf(region: Region, headingDeg: number | null): number {
  if (headingDeg !== null) return radOfBearing(headingDeg);
  let longestM = 0;
  let rad = 0;
  region.outer.forEach((from, i) => {
    const to = region.outer[(i + 1) % region.outer.length] ?? from;
    const lengthM = distanceM(from, to);
    if (lengthM <= longestM) return;
    longestM = lengthM;
    rad = Math.atan2(to.yM - from.yM, to.xM - from.xM);
  });
  return rad;
}
