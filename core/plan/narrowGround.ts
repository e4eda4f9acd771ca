import { intersectRegions, offsetRegions, regionAreaM2, subtractRegions } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import type { Region, Ring, YardPoint } from '../spaces.ts';
import type { ResolvedYard } from '../zones/index.ts';

/** On ground narrower than this part of a swath, more of a pass falls beside it than on it. */
const LEAST_WIDTH = 0.5;
/** Less narrow ground in one place than this part of a swath square is a corner, not a way. */
const LEAST_PLACE = 0.5;
/** What shrinking and growing back again may be off at rounded corners, in metres. */
const ROUND_M = 0.005;

/**
 * Ground too narrow to walk, in m²: necks and tongues no wider than half a swath. What is left when the ground is
 * shrunk by a quarter of a swath and grown back is wide enough; corners, which that rounds, do not count. A way that
 * joins two wide parts counts however little ground it is.
 */
export function narrowGroundM2(ground: readonly Region[], swathM: number): number {
  const insetM = (LEAST_WIDTH * swathM) / 2;
  const leastM2 = LEAST_PLACE * swathM * swathM;
  if (!mayBeNarrow(ground, insetM * PROBE, leastM2 * PROBE_PART)) return 0;
  const wide = offsetRegions(offsetRegions(ground, -insetM), insetM + ROUND_M);
  return subtractRegions(ground, wide)
    .filter((place) => regionAreaM2(place) >= leastM2 || (wide.length > ground.length && joins(place, wide)))
    .reduce((sum, place) => sum + regionAreaM2(place), 0);
}

function joins(place: Region, wide: readonly Region[]): boolean {
  const reached = offsetRegions([place], 2 * ROUND_M);
  return wide.filter((part) => intersectRegions(reached, [part]).length > 0).length > 1;
}

/** The probe shrinks by this much more, so that ground just narrow enough loses a third less than its edges would. */
const PROBE = 1.5;
const PROBE_PART = 0.4;

/**
 * A quick no for most ground. Shrunk by r, ground loses its edges' length times r, less r² tan(turn / 2) at a corner
 * that stands out, more r² turn / 2 at one that stands in: unless edges are so near to each other that they lose some
 * of it together.
 */
function mayBeNarrow(ground: readonly Region[], insetM: number, mostM2: number): boolean {
  const rings = ground.flatMap(({ outer, holes }) => [outer, ...holes]);
  const apartM2 = rings.reduce((sum, ring) => sum + edgeLossM2(ring, insetM), 0);
  const areaM2 = (regions: readonly Region[]) => regions.reduce((sum, each) => sum + regionAreaM2(each), 0);
  const shrunk = offsetRegions(ground, -insetM);
  return shrunk.length > ground.length || apartM2 - (areaM2(ground) - areaM2(shrunk)) > mostM2;
}

function edgeLossM2(ring: Ring, insetM: number): number {
  return ring.reduce((sum, at, i) => {
    const before = ring[(i + ring.length - 1) % ring.length] as YardPoint;
    const after = ring[(i + 1) % ring.length] as YardPoint;
    const [ax, ay] = [at.xM - before.xM, at.yM - before.yM];
    const [bx, by] = [after.xM - at.xM, after.yM - at.yM];
    const turnRad = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    const atCornerM2 = insetM ** 2 * (turnRad > 0 ? -Math.tan(turnRad / 2) : -turnRad / 2);
    return sum + Math.hypot(bx, by) * insetM + atCornerM2;
  }, 0);
}

/** Zones with ground too narrow to walk, so that the person treats it by hand; those no pass fits in are said elsewhere. */
export function narrowWays(
  { zones }: Pick<ResolvedYard, 'zones'>,
  swathM: number,
  without: ReadonlySet<string>,
): Problem[] {
  return zones.flatMap(({ name, treated }): Problem[] => {
    const areaM2 = without.has(name) ? 0 : foundBefore(treated, swathM);
    if (areaM2 === 0) return [];
    const facts = { areaM2, widthM: LEAST_WIDTH * swathM };
    return [{ kind: 'plan/too-narrow-to-walk', where: { thing: name }, facts }];
  });
}

const found = new WeakMap<readonly Region[], { readonly swathM: number; readonly areaM2: number }>();

/** A first plan and a better one after it are of the same ground. */
function foundBefore(treated: readonly Region[], swathM: number): number {
  const before = found.get(treated);
  if (before?.swathM === swathM) return before.areaM2;
  const areaM2 = narrowGroundM2(treated, swathM);
  found.set(treated, { swathM, areaM2 });
  return areaM2;
}
