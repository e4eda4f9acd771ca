import { radOfBearing } from '../frame/index.ts';
import { distanceM, interiorPoint, regionAreaM2 } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Region } from '../spaces.ts';
import type { SectionPolicy } from '../yard.ts';
import { borderLines } from './borderLines.ts';
import { type CutPiece, cutPiece } from './cutPiece.ts';
import { orderSections } from './orderSections.ts';
import type { Cut, CutLine, Section } from './section.ts';
import { loadCount, type Share } from './share.ts';
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
  readonly isCancelled?: () => boolean;
}

export interface ZoneSections {
  /** Numbered in an order to walk them in. */
  readonly sections: readonly Section[];
  readonly cutLines: readonly CutLine[];
  readonly cuts: readonly Cut[];
}

/** A zone in more sections than this is a typing slip, or a job for a machine. */
export const MOST_SECTIONS = 1000;
/** Ground over the load by less than this part of it is rounding and asks for no further load. */
const LOAD_SLACK = 1e-9;

/**
 * Cuts a zone into sections, each connected and within one load.
 *
 * Even policy: each connected piece in as few equal sections as the load allows. Fewest: each load filled to the
 * full and one smaller remainder a piece.
 *
 * @returns sections that do not overlap and sum to the zone; the straight borders between them
 * Problems: plan/load-below-one-swath-square, plan/too-many-sections, plan/nothing-to-treat, plan/cancelled,
 *   plan/no-connected-cut (ground that no straight cut found parts into connected sections)
 * Accuracy: equal sections agree to 1e-8 of the piece before their cuts are moved to tape marks, which is done only
 *   as far as every load has room; checked in tests/core/sections/planSections.test.ts
 * Cost: about n log n in the corners times the sections for simple ground; n^2 where whole lines will not do
 */
export function planSections(zone: ZoneGround, request: SectionRequest): Result<ZoneSections> {
  const problem = findProblem(zone, request);
  if (problem !== undefined) return trouble(problem);
  const isCancelled = request.isCancelled ?? (() => false);
  const { swathM, markM, loadAreaM2 } = request;
  const tapeSides = new TapeSides(request.tapeSides ?? []);
  const pieces: CutPiece[] = [];
  for (const region of zone.treated) {
    const share = shareOf(region, request);
    const lay = { laneRad: laneRadOf(region, request.headingDeg), swathM, markM, tapeSides, loadAreaM2 };
    const piece = cutPiece(share, lay, isCancelled);
    if (piece !== undefined) pieces.push(piece);
    else {
      const where = { thing: zone.zoneName };
      if (isCancelled()) return trouble({ kind: 'plan/cancelled', where, facts: {} });
      const sections = loadCount(share);
      return trouble({ kind: 'plan/no-connected-cut', where, facts: { sections } });
    }
  }
  const regions = pieces.flatMap((piece) => piece.parts.map((part) => part.region));
  const order = orderSections(regions.map((region) => interiorPoint(region)));
  const sections = order.map((index, place): Section => {
    const region = regions[index] as Region;
    const areaM2 = regionAreaM2(region);
    return { id: `${zone.letter}${place + 1}`, zoneId: zone.zoneId, zoneName: zone.zoneName, region, areaM2 };
  });
  const lines = pieces.flatMap((piece) => piece.cuts);
  const cuts = lines.map(([from, to]): Cut => ({ zoneId: zone.zoneId, from, to, heldId: null }));
  return ok({ sections, cuts, cutLines: borderLines(lines, sections) });
}

function findProblem(zone: ZoneGround, request: SectionRequest): Problem | undefined {
  const where = { thing: zone.zoneName };
  const { loadAreaM2, swathM } = request;
  if (zone.treated.length === 0) return { kind: 'plan/nothing-to-treat', where, facts: {} };
  // Written so that a number that is not one is refused too.
  if (!(loadAreaM2 >= swathM * swathM)) {
    const facts = { capacityM2: loadAreaM2, swathM };
    return { kind: 'plan/load-below-one-swath-square', where, facts };
  }
  const sections = zone.treated.reduce((sum, region) => sum + loadCount(shareOf(region, request)), 0);
  if (sections <= MOST_SECTIONS) return undefined;
  return { kind: 'plan/too-many-sections', where, facts: { sections, most: MOST_SECTIONS } };
}

function shareOf(region: Region, { loadAreaM2, policy }: SectionRequest): Share {
  const areaM2 = regionAreaM2(region);
  const count = Math.max(1, Math.ceil(areaM2 / loadAreaM2 - LOAD_SLACK));
  const restM2 = areaM2 - (count - 1) * loadAreaM2;
  const isFull = restM2 >= loadAreaM2 * (1 - LOAD_SLACK);
  if (policy === 'even' || count === 1 || isFull) return { region, loads: count, rests: [] };
  const tail = { end: 'tail' as const, areaM2: restM2, mostM2: loadAreaM2 };
  return { region, loads: count - 1, rests: [tail] };
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
