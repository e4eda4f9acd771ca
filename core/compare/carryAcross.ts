import { outlineRings } from '../curves/index.ts';
import { lonLatToYard, yardToLonLat } from '../earth/index.ts';
import { MOST_REACH_M } from '../kernel/index.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { LonLat, Region, YardPoint } from '../spaces.ts';
import type { Yard } from '../yard.ts';

export interface Carrier {
  readonly apartM: number | null;
  readonly carry: (regions: readonly Region[]) => readonly Region[];
}

/** Mean radius of the earth, for telling how far two yards are apart. Source: IUGG mean radius R1 of GRS 80. */
const EARTH_RADIUS_M = 6_371_008.8;

/**
 * How ground of the earlier yard gets into the frame of the later one. Two loose yards are taken to share their
 * origin, as a copy does.
 *
 * Problems: compare/only-one-placed, compare/too-far-apart
 * Accuracy: corners to 1e-8 m there and back, and held against a geodesic in the tests; an edge stays straight between its corners,
 * which for frames 3 km apart moves no point of a 100 m edge by more than 1e-6 m
 */
export function carrierBetween(before: Yard, after: Yard): Result<Carrier> {
  const [from, to] = [before.details.frame, after.details.frame];
  if (from.kind === 'loose' && to.kind === 'loose') return ok({ apartM: null, carry: (regions) => regions });
  if (from.kind === 'loose' || to.kind === 'loose') {
    const loose = from.kind === 'loose' ? before : after;
    return trouble({
      kind: 'compare/only-one-placed',
      where: {},
      facts: { looseName: loose.details.name, looseIs: loose === before ? 'earlier' : 'later' },
    });
  }
  const apartM = apart(from.origin, to.origin);
  if (apartM === 0) return ok({ apartM, carry: (regions) => regions });
  const move = (point: YardPoint): YardPoint => lonLatToYard(to.origin, yardToLonLat(from.origin, point));
  const carry = (regions: readonly Region[]): readonly Region[] =>
    regions.map(({ outer, holes }) => ({
      outer: outer.map(move),
      holes: holes.map((hole) => hole.map(move)),
    }));
  // Far from its origin the projection need not even answer, so the origins' distance is asked first.
  const reaches =
    apartM <= MOST_REACH_M &&
    before.outlines.every((outline) =>
      outlineRings(outline)
        .flat()
        .every((point) => isNear(move(point))),
    );
  if (!reaches) return trouble({ kind: 'compare/too-far-apart', where: {}, facts: { apartM } });
  return ok({ apartM, carry });
}

function isNear({ xM, yM }: YardPoint): boolean {
  return Math.abs(xM) <= MOST_REACH_M && Math.abs(yM) <= MOST_REACH_M;
}

/** Great-circle distance; a sphere is near enough to say how far. Source: haversine formula. */
function apart(a: LonLat, b: LonLat): number {
  const [latA, latB] = [radOf(a.latDeg), radOf(b.latDeg)];
  const half =
    Math.sin((latB - latA) / 2) ** 2 +
    Math.cos(latA) * Math.cos(latB) * Math.sin(radOf(b.lonDeg - a.lonDeg) / 2) ** 2;
  return 2 * EARTH_RADIUS_M * Math.asin(Math.min(1, Math.sqrt(half)));
}

function radOf(deg: number): number {
  return (deg * Math.PI) / 180;
}
