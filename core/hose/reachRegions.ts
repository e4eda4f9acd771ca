import { tracedRing } from '../curves/index.ts';
import { type SightLines, unionRegions } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import type { Bend } from './bendTree.ts';
import { type ClearGround, clearGround } from './clearGround.ts';
import type { HoseGround, HoseSpigot } from './hoseGround.ts';
import { type HoseWays, hoseWays } from './hoseWays.ts';
import { type Sector, seenWithin } from './seenWithin.ts';

/** A bend sees this much of the ground its way already saw, so that neighbouring parts overlap, radians. */
const OVERLAP_RAD = 0.02;

/**
 * The clear ground a hose of the job's length gets to from one spigot.
 *
 * @returns regions that do not overlap; none from a spigot that is shut in
 * Accuracy: edges within 2 mm, arcs by their area, as core/curves
 * Method: the union, over the start and every bend, of what is seen from there within the hose that is left
 */
export function reachRegions(hose: HoseGround, spigot: HoseSpigot): readonly Region[] {
  const ground = clearGround(hose);
  return reachOfWays(ground, [hoseWays(ground, spigot)], hose.lengthM);
}

/** The same from any of some spigots. */
export function reachOfWays(
  { clear }: ClearGround,
  all: readonly HoseWays[],
  lengthM: number,
): readonly Region[] {
  const parts = all.flatMap(({ stand, bends }) =>
    bends.flatMap((bend) => partOf(clear, bend, lengthM - (stand?.wayM ?? 0) - bend.soFarM)),
  );
  return unionRegions(parts);
}

function partOf(lines: SightLines, bend: Bend, leftM: number): readonly Region[] {
  if (!(leftM > 0)) return [];
  const corners = seenWithin(lines, bend.at, sectorOf(bend), leftM);
  if (corners.length < 3) return [];
  return [{ outer: tracedRing({ kind: 'corners', corners }), holes: [] }];
}

/** Where a way may go on from a bend: from a little before straight ahead to the edge it is laid round. */
function sectorOf({ via, wedge }: Bend): Sector | null {
  if (via < 0) return null;
  const { side, aheadX, aheadY } = wedge;
  const turnTo = (x: number, y: number): number => {
    const rad = Math.atan2(side * (aheadX * y - aheadY * x), aheadX * x + aheadY * y);
    // An edge that runs straight back may come out on either side for rounding.
    return rad < -Math.PI / 2 ? rad + 2 * Math.PI : Math.max(0, rad);
  };
  const aheadRad = Math.atan2(aheadY, aheadX);
  const turnRad = Math.min(turnTo(wedge.beforeX, wedge.beforeY), turnTo(wedge.afterX, wedge.afterY));
  return side > 0
    ? { fromRad: aheadRad - OVERLAP_RAD, sweepRad: turnRad + OVERLAP_RAD }
    : { fromRad: aheadRad - turnRad, sweepRad: turnRad + OVERLAP_RAD };
}
