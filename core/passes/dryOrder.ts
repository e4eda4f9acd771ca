import { lineLengthM, ringBounds } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import { sum } from '../units/index.ts';
import type { Ends, Walk } from './leg.ts';
import { orderPasses } from './orderPasses.ts';
import { apartM } from './ringEntry.ts';
import { type TroddenPass, wetWalkM } from './wetWalk.ts';

/**
 * What a metre over treated turf counts for besides being walked, in metres of dry walking. Feet that carry spray to
 * the next zone or the door are worth a detour, but not a long one. A rule of our own.
 */
const WET_WEIGHT = 1;
/** Orders that differ by less are as good. */
const SAME_M = 1e-6;
/** With more passes than this the first order stays: the others take as long each. */
const MOST_WALKS = 160;
/** With no more passes than this, orders begun at four corners are tried too. */
const MOST_WALKS_FROM_CORNERS = 50;

/**
 * Passes in the order with the least walking and treading on treated turf, of several: as short as can be found; with
 * the longest perimeter pass last; with all of them last. That keeps the ground along the edges dry to walk on until the
 * lanes are done. First was tried too: it seldom wins, and takes as long again.
 *
 * @returns see orderPasses
 * Cost: three times orderPasses from each start
 */
export function dryOrder(walks: readonly Walk[], ends: Ends, swathM: number): Walk[] {
  let best = orderPasses(walks, ends);
  let least = costOf(best, ends, swathM);
  if (least.wetM < SAME_M || walks.length > MOST_WALKS) return best;
  for (const from of startsOf(walks, ends)) {
    for (const groups of [[walks], ...groupings(walks)]) {
      const order = inGroups(groups, { ...ends, from });
      const dearM = least.wholeM - SAME_M;
      // Treading is the dearer one to count: where the walk alone is as long, it need not be.
      if (sum(waysOf(order, ends).map(wayM)) >= dearM) continue;
      const cost = costOf(order, ends, swathM);
      if (cost.wholeM >= dearM) continue;
      best = order;
      least = cost;
    }
  }
  return best;
}

/**
 * Where orders are begun: where the person stands, if that is known, and where it takes little time at the corners as
 * well. What they come to is counted from where the person stands all the same.
 */
function startsOf(walks: readonly Walk[], { from }: Ends): (YardPoint | null)[] {
  if (walks.length > MOST_WALKS_FROM_CORNERS) return [from];
  const { minXM, minYM, maxXM, maxYM } = ringBounds(walks.flatMap(({ line }) => line));
  const corners = [minXM, maxXM].flatMap((xM) => [minYM, maxYM].map((yM) => ({ xM, yM })));
  return [from, ...corners];
}

function groupings(walks: readonly Walk[]): (readonly Walk[])[][] {
  const perimeters = walks.filter(({ kind }) => kind === 'perimeter');
  if (perimeters.length === 0) return [];
  const longest = perimeters.toSorted((a, b) => lineLengthM(b.line) - lineLengthM(a.line)).slice(0, 1);
  const sets = perimeters.length > 1 ? [longest, perimeters] : [longest];
  return sets.map((set) => [walks.filter((walk) => !set.includes(walk)), set]);
}

/** Group after group, each begun where the one before ended. */
function inGroups(groups: readonly (readonly Walk[])[], ends: Ends): Walk[] {
  const order: Walk[] = [];
  for (const [place, group] of groups.entries()) {
    const isLast = place === groups.length - 1;
    order.push(
      ...orderPasses(group, { from: order.at(-1)?.line.at(-1) ?? ends.from, to: isLast ? ends.to : null }),
    );
  }
  return order;
}

/** The straight way to each walk from the one before, and to where the person wants to end; null where none is asked. */
function waysOf(order: readonly Walk[], { from, to }: Ends): (readonly YardPoint[] | null)[] {
  const straight = (a: YardPoint | null | undefined, b: YardPoint | null | undefined): YardPoint[] | null =>
    a == null || b == null ? null : [a, b];
  const ways = order.map(({ line }, i) => straight(order[i - 1]?.line.at(-1) ?? from, line[0]));
  return [...ways, straight(order.at(-1)?.line.at(-1), to)];
}

function wayM(way: readonly YardPoint[] | null): number {
  return apartM(way?.[0], way?.[1]);
}

function costOf(order: readonly Walk[], ends: Ends, swathM: number): { wetM: number; wholeM: number } {
  const ways = waysOf(order, ends);
  const passes = order.map(({ line }): TroddenPass => ({ line, sectionId: '', round: 1 }));
  const wetM = sum(wetWalkM(passes, ways, swathM));
  return { wetM, wholeM: sum(ways.map(wayM)) + WET_WEIGHT * wetM };
}
