import { offsetRegions, regionAreaM2, ringPerimeterM } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { bearingDegOf, laneHeadings, laneRadOf } from './headings.ts';
import { type Lane, lanesAcross } from './lanes.ts';
import { narrowLanes } from './narrowLanes.ts';
import { orderPasses, type Walk } from './orderPasses.ts';
import type { Pass } from './pass.ts';

export interface PassRequest {
  readonly swathM: number;
  /** Compass bearing of the lanes; null = the one with the least walking. */
  readonly headingDeg: number | null;
  /** Where the person stands before the first pass; null = anywhere. */
  readonly startAt: YardPoint | null;
}

export interface SectionPasses {
  /** In walking order, `order` counted from 1. */
  readonly passes: readonly Pass[];
  /** Bearing of the lanes, in [0, 180). */
  readonly headingDeg: number;
}

/** Headings whose lanes are laid out before one is chosen. */
const HEADINGS_TRIED = 8;
/** What a further lane costs in walking while off, in swaths: to the next lane, and some to reach its end. */
const TURN_SWATHS = 1.5;
/** Rings shorter than this part of a swath are the rounding of a shape that just fits. */
const SHORTEST_RING_PART = 0.1;
/** Ground left inside the perimeter passes that is smaller than this part of a swath square is rounding. */
const SMALLEST_REST_PART = 0.002;

/**
 * Passes over one section: round every edge half a swath inside it, then lanes over what is left, then a lane
 * down each neck that is too narrow for both.
 *
 * Every swath stays within the section, save beside such neck lanes. What no pass fits is left out; `measureCoverage`
 * then lists it as missed.
 *
 * Accuracy: centre lines half a swath inside to 1 mm (round joins); checked in tests/core/passes/planPasses.test.ts
 * Cost: three offsets, then passes squared for the order
 */
export function planPasses(
  section: { readonly id: string; readonly region: Region },
  request: PassRequest,
): SectionPasses {
  const { swathM, headingDeg, startAt } = request;
  const reachable = offsetRegions([section.region], -swathM / 2, 'round');
  const rings = reachable
    .flatMap((region) => [region.outer, ...region.holes])
    .filter((ring) => ringPerimeterM(ring) > SHORTEST_RING_PART * swathM);
  const inner = offsetRegions([section.region], -swathM, 'round').filter(
    (region) => regionAreaM2(region) > SMALLEST_REST_PART * swathM * swathM,
  );
  const headings = headingDeg === null ? headingsFor(section.region, inner, swathM) : [laneRadOf(headingDeg)];
  const chosen = cheapest(
    headings.map((rad) => ({ rad, lanes: lanesAcross(inner, rad, swathM) })),
    swathM,
  );
  const lanes = [...chosen.lanes, ...narrowLanes(section.region, reachable, swathM)];
  const walks: Walk[] = [
    ...rings.map((line): Walk => ({ kind: 'perimeter', line })),
    ...lanes.map((line): Walk => ({ kind: 'lane', line })),
  ];
  const passes = orderPasses(walks, startAt).map(({ kind, line }, place): Pass => {
    return { sectionId: section.id, order: place + 1, kind, line, lengthM: lineLengthM(line) };
  });
  return { passes, headingDeg: bearingDegOf(chosen.rad) };
}

/** Edges of the section lend the headings: those of the ground left inside have round corners. */
function headingsFor(region: Region, inner: readonly Region[], swathM: number): number[] {
  const few = laneHeadings([region], swathM, HEADINGS_TRIED);
  return inner.length === 0 ? few.slice(0, 1) : few;
}

function cheapest(
  choices: readonly { rad: number; lanes: readonly Lane[] }[],
  swathM: number,
): { rad: number; lanes: readonly Lane[] } {
  let best: { rad: number; lanes: readonly Lane[] } = { rad: 0, lanes: [] };
  let bestM = Infinity;
  for (const choice of choices) {
    const walkM = choice.lanes.reduce((sum, lane) => sum + lineLengthM(lane) + TURN_SWATHS * swathM, 0);
    if (walkM >= bestM - 1e-9) continue;
    bestM = walkM;
    best = choice;
  }
  return best;
}

/** Length of a walked line. */
export function lineLengthM(line: readonly YardPoint[]): number {
  let lengthM = 0;
  line.forEach((to, i) => {
    const from = line[i - 1];
    if (from !== undefined) lengthM += Math.hypot(to.xM - from.xM, to.yM - from.yM);
  });
  return lengthM;
}
