import { Defect } from '../result.ts';
import type { Region, Ring, YardPoint } from '../spaces.ts';
import { BoxIndex } from './BoxIndex.ts';
import { regionContains } from './inside.ts';
import { grown, type RingBounds } from './measure.ts';
import { RegionIndex } from './RegionIndex.ts';
import { reversedRing } from './reversedRing.ts';

/** Something to be taken from regions: simply a hole, if it is one ring and lies clear of everything. */
export interface HoleCandidate {
  /** Simple and counter-clockwise; undefined for what is more than one ring. */
  readonly ring: Ring | undefined;
  readonly bounds: RingBounds;
}

/**
 * Ten grid steps. An overlay of something else rounds the places where it cuts an edge, and so bends the edge by a step
 * or two: a bed nearer than that may have a corner on the wrong side afterwards ('shared edges, turned', seed 117 of
 * tests/oracle/netArea.test.ts).
 */
const CLEAR_M = 1e-5;

/** Regions do not change; one that is not dragged answers from the index it had. */
const indexes = new WeakMap<Region, RegionIndex>();

/**
 * For each candidate the region it lies whole inside, well clear of every edge and of the boxes of all other candidates;
 * -1 where there is none.
 *
 * @param regions apart from one another
 * Cost: n for the regions; log n an edge for the candidates
 */
export function placeClear(
  regions: readonly Region[],
  candidates: readonly HoleCandidate[],
): readonly number[] {
  const boxes = new BoxIndex(candidates, ({ bounds }) => bounds);
  return candidates.map(({ ring, bounds }) => {
    if (ring === undefined || boxes.meeting(grown(bounds, CLEAR_M)).length > 1) return -1;
    return regions.findIndex((region) => indexOf(region).holdsClear(ring, CLEAR_M));
  });
}

/**
 * Regions with holes that were placed by `placeClear`.
 *
 * @param rings each ring and the region it was placed in
 * @param isAsBefore the regions are those it was placed in, not what an overlay made of them
 * Throws a Defect when no region is round a ring: it was not clear of that overlay.
 */
export function withClearHoles(
  regions: readonly Region[],
  rings: readonly (readonly [Ring, number])[],
  isAsBefore: boolean,
): Region[] {
  const holes = regions.map((region) => [...region.holes]);
  for (const [ring, placed] of rings) {
    // Clear of all that was overlaid, so one corner tells which piece it lies in.
    const owner = isAsBefore
      ? placed
      : regions.findIndex((piece) => regionContains(piece, ring[0] as YardPoint));
    if (owner < 0) throw new Defect('no ground round a hole');
    holes[owner]?.push(reversedRing(ring));
  }
  return regions.map(({ outer }, i) => ({ outer, holes: holes[i] ?? [] }));
}

/** Whether a ring has nothing in common with any of the regions, not even a touched edge. */
export function isApart(regions: readonly Region[], ring: Ring): boolean {
  return regions.every((region) => indexOf(region).isApart(ring));
}

function indexOf(region: Region): RegionIndex {
  const known = indexes.get(region);
  if (known !== undefined) return known;
  const index = new RegionIndex(region);
  indexes.set(region, index);
  return index;
}
