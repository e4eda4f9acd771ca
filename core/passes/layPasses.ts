import { radOfBearing } from '../frame/index.ts';
import { lineLengthM, offsetRegions } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { bearingDegOf, laneHeadings } from './headings.ts';
import { type Lane, lanesAcross } from './lanes.ts';
import { narrowLanes } from './narrowLanes.ts';
import { findOpenEdges } from './openEdges.ts';
import type { Walk } from './leg.ts';
import { fullPerimeters, type Perimeters, partPerimeters } from './perimeters.ts';

/** The passes of a section before they are put in order. */
export interface LaidPasses {
  readonly walks: readonly Walk[];
  /** Bearing of the lanes, in [0, 180). */
  readonly headingDeg: number;
}

/** Headings whose lanes are laid out before one is chosen. */
const HEADINGS_TRIED = 8;
/** Of those, the ones also tried with lanes running up to the edges they suit: each takes overlays of its own. */
const OPEN_HEADINGS_TRIED = 2;
/**
 * What a further pass costs in walking while off, in swaths: the way to the next one. 1.5 was tried, for ways round
 * beds: it walks as much in all and treats more ground twice.
 */
const TURN_SWATHS = 1;

/**
 * Lays passes over a section: along the edges half a swath inside them, then lanes over what is left, then a lane
 * down each neck that is too narrow for both. Edges that the lanes run along or end on squarely may go without a
 * perimeter pass, where that walks less.
 *
 * Every swath stays within the section, save beside such neck lanes. What no pass fits is left out; `measureCoverage`
 * then lists it as missed.
 *
 * @param headingDeg compass bearing of the lanes; null = the one with the least walking
 * Accuracy: centre lines half a swath inside to 1 mm (round joins); checked in tests/core/passes/planPasses.test.ts
 * Cost: three offsets
 */
export function layPasses(region: Region, swathM: number, headingDeg: number | null): LaidPasses {
  const reachable = offsetRegions([region], -swathM / 2);
  const headings =
    headingDeg === null ? laneHeadings([region], swathM, HEADINGS_TRIED) : [radOfBearing(headingDeg)];
  const full = fullPerimeters(region, reachable, swathM);
  const layouts = headings.map((rad): Layout => {
    return { rad, perimeters: full, lanes: lanesAcross(full.inner, rad, swathM) };
  });
  for (const rad of headings.slice(0, OPEN_HEADINGS_TRIED)) {
    const open = findOpenEdges(region, rad, swathM);
    if (open === undefined) continue;
    const perimeters = partPerimeters(region, open, swathM);
    layouts.push({ rad, perimeters, lanes: lanesAcross(perimeters.inner, rad, swathM, open) });
  }
  const chosen = cheapest(layouts, swathM);
  const lanes = [...chosen.lanes, ...narrowLanes(region, reachable, swathM)];
  const walks: Walk[] = [
    ...chosen.perimeters.walks,
    ...lanes.map((line): Walk => ({ kind: 'lane', line, isRing: false })),
  ];
  return { walks, headingDeg: bearingDegOf(chosen.rad) };
}

/** One way to walk a section. */
interface Layout {
  readonly rad: number;
  readonly perimeters: Perimeters;
  readonly lanes: readonly Lane[];
}

function cheapest(layouts: readonly Layout[], swathM: number): Layout {
  let best: Layout = { rad: 0, perimeters: { walks: [], inner: [] }, lanes: [] };
  let bestM = Infinity;
  for (const layout of layouts) {
    const lines = [...layout.perimeters.walks.map(walkedLine), ...layout.lanes];
    const walkM = lines.reduce((sum, line) => sum + lineLengthM(line) + TURN_SWATHS * swathM, 0);
    if (walkM >= bestM - 1e-9) continue;
    bestM = walkM;
    best = layout;
  }
  return best;
}

/** A ring is walked back to where it began. */
function walkedLine({ line, isRing }: Walk): Walk['line'] {
  return isRing ? [...line, line[0] as YardPoint] : line;
}
