import { tracedRegion, tracedRing } from '../curves/index.ts';
import {
  distanceM,
  nearestOnEdge,
  regionContains,
  ringBounds,
  subtractRegions,
  unionRegions,
} from '../kernel/index.ts';
import { makeWalkable, type Pass } from '../passes/index.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Section } from '../sections/index.ts';
import type { Region, Ring, YardPoint } from '../spaces.ts';
import type { Yard } from '../yard.ts';

/** The hose each section needs from a spigot, laid the shortest way round buildings to where its passes run. */
export interface HoseReach {
  readonly spigot: string;
  readonly hoseM: number;
  readonly sections: readonly {
    readonly id: string;
    readonly neededM: number;
    readonly isBeyond: boolean;
  }[];
}

/** A hose may run off the lot, along the street or a neighbour's edge, this far. */
const BEYOND_LOT_M = 20;
/** Passes are looked at this often; between two looks the way grows by at most half of it. */
const LOOK_EVERY_M = 0.5;
/** A yard of hectares is looked at more seldom, so that the answer stays quick. */
const MOST_LOOKS = 4000;

/**
 * Buildings are gone round; a hose is drawn over everything else. It lies without slack and bends at a corner: a
 * real one needs a little more.
 * Accuracy: the way to a point is shortest; along a pass the most is found to half of LOOK_EVERY_M
 * Problems: value/missing when there is no such spigot
 */
export function hoseReach(
  yard: Pick<Yard, 'outlines' | 'marks'>,
  plan: { readonly sections: readonly Section[]; readonly passes: readonly Pass[] },
  spigot: string,
  hoseM: number,
): Result<HoseReach> {
  const mark = yard.marks.find((each) => each.kind === 'spigot' && each.name === spigot);
  if (mark === undefined) {
    return trouble({ kind: 'value/missing', where: { field: `The spigot “${spigot}”` }, facts: {} });
  }
  const buildings = unionRegions(yard.outlines.filter(({ kind }) => kind === 'building').map(tracedRegion));
  const ways = makeWalkable(subtractRegions([lotAround(yard)], buildings));
  const from = outOf(buildings, mark.at);
  const wholeM = plan.passes.reduce((sum, pass) => sum + pass.lengthM, 0);
  const everyM = Math.max(LOOK_EVERY_M, wholeM / MOST_LOOKS);
  const sections = plan.sections.map(({ id, region }) => {
    const lines = plan.passes.filter((pass) => pass.sectionId === id).map((pass) => pass.line);
    const places = lines.length > 0 ? lines.flatMap((line) => looksAlong(line, everyM)) : region.outer;
    const neededM = places.reduce((most, place) => Math.max(most, ways.wayM(from, place)), 0);
    return { id, neededM, isBeyond: neededM > hoseM };
  });
  return ok({ spigot, hoseM, sections });
}

function lotAround({ outlines, marks }: Pick<Yard, 'outlines' | 'marks'>): Region {
  const points = [
    ...outlines.flatMap((outline) => tracedRing(outline.outer)),
    ...marks.map((mark) => mark.at),
  ];
  const { minXM, minYM, maxXM, maxYM } = ringBounds(points);
  const [west, east] = [minXM - BEYOND_LOT_M, maxXM + BEYOND_LOT_M];
  const [south, north] = [minYM - BEYOND_LOT_M, maxYM + BEYOND_LOT_M];
  const outer = [
    { xM: west, yM: south },
    { xM: east, yM: south },
    { xM: east, yM: north },
    { xM: west, yM: north },
  ];
  return { outer, holes: [] };
}

/** A spigot drawn a little inside its wall stands at the nearest place on the wall. */
function outOf(buildings: readonly Region[], at: YardPoint): YardPoint {
  const inside = buildings.find((building) => regionContains(building, at));
  return inside === undefined ? at : nearestOn(inside.outer, at);
}

function nearestOn(ring: Ring, at: YardPoint): YardPoint {
  let nearest = at;
  let nearestM = Number.POSITIVE_INFINITY;
  for (const [place, a] of ring.entries()) {
    const foot = nearestOnEdge(a, ring[(place + 1) % ring.length] ?? a, at);
    const awayM = distanceM(foot, at);
    if (awayM < nearestM) [nearest, nearestM] = [foot, awayM];
  }
  return nearest;
}

/** The corners of a line and places between them no farther apart than `everyM`. */
function looksAlong(line: readonly YardPoint[], everyM: number): readonly YardPoint[] {
  return line.flatMap((a, place) => {
    const b = line[place + 1];
    if (b === undefined) return [a];
    const steps = Math.max(1, Math.ceil(distanceM(a, b) / everyM));
    return Array.from({ length: steps }, (_, step) => ({
      xM: a.xM + ((b.xM - a.xM) * step) / steps,
      yM: a.yM + ((b.yM - a.yM) * step) / steps,
    }));
  });
}
