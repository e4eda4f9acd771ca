import { distanceM, distanceToEdgeM, regionContains } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { type CutEnds, runAlong, splitAlong } from './splitAlong.ts';

/** Ends this near to an edge or to another cut stand on it. */
const ON_M = 1e-5;

/**
 * The ground one cut parts: the treated ground of its zone, as far as the cuts its ends rest on. Those made after it,
 * which part what is left of it, do not count.
 *
 * @param treated of its zone
 * @param others the other cuts of the zone
 * @returns undefined when the cut crosses none of the ground
 */
export function cutBed(
  treated: readonly Region[],
  cut: CutEnds,
  others: readonly CutEnds[],
): Region | undefined {
  const region = treated.find((each) => runAlong(each, cut) !== undefined);
  return region && bedIn(region, cut, others);
}

/** The cut an end rests on in mid-ground; undefined where it stands on the ground's own edge. */
export function cutUnder<T extends CutEnds>(
  treated: readonly Region[],
  end: YardPoint,
  others: readonly T[],
): T | undefined {
  if (treated.some((region) => isOnEdge(region, end))) return undefined;
  return others.find((other) => distanceToEdgeM(other.from, other.to, end) <= ON_M);
}

function bedIn(region: Region, cut: CutEnds, others: readonly CutEnds[]): Region {
  let bed = region;
  for (const end of [cut.from, cut.to]) {
    const under = cutUnder([bed], end, others);
    if (under === undefined) continue;
    const parent = bedIn(
      bed,
      under,
      others.filter((other) => other !== under),
    );
    const sides = splitAlong(parent, under);
    const inside = placeOn(bed, cut);
    const half = sides && [sides.left, sides.right].find((side) => regionContains(side, inside));
    if (half !== undefined) bed = half;
  }
  return bed;
}

/** A place on the cut that lies on the ground: the middle of its longest run, not of a bed it crosses. */
function placeOn(region: Region, cut: CutEnds): YardPoint {
  const chords = runAlong(region, cut)?.chords ?? [];
  const longest = chords.reduce<CutEnds>(
    (best, { start, end }) => {
      // Only as far as the cut itself goes: the run may go on past the cut it rests on.
      const [from, to] = [within(cut, start.at), within(cut, end.at)];
      return distanceM(from, to) > distanceM(best.from, best.to) ? { from, to } : best;
    },
    { from: cut.from, to: cut.from },
  );
  const { from, to } = longest;
  return { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 };
}

function within({ from, to }: CutEnds, at: YardPoint): YardPoint {
  const lengthM = distanceM(from, to);
  const alongM = ((at.xM - from.xM) * (to.xM - from.xM) + (at.yM - from.yM) * (to.yM - from.yM)) / lengthM;
  if (alongM <= 0) return from;
  return alongM >= lengthM ? to : at;
}

function isOnEdge(region: Region, at: YardPoint): boolean {
  return [region.outer, ...region.holes].some((ring) =>
    ring.some((a, i) => distanceToEdgeM(a, ring[(i + 1) % ring.length] ?? a, at) <= ON_M),
  );
}
