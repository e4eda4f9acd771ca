import { regionContains } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { farthestAlong, type HosePlace, nearestAlong } from './alongLines.ts';
import type { HoseWays } from './hoseWays.ts';

/** A spigot, and the hose it takes from there to the farthest of some lines. */
export interface Reach {
  readonly ways: HoseWays;
  /** Infinity where no way leads. */
  readonly neededM: number;
}

/** What each spigot takes to the farthest place of some lines, and the one that takes least; the first of equals. */
export function reachOf(
  all: readonly HoseWays[],
  lines: readonly (readonly YardPoint[])[],
): { readonly each: readonly Reach[]; readonly best: Reach | undefined } {
  const each = all.map((ways) => ({ ways, neededM: farthestAlong(ways, lines)?.lengthM ?? Infinity }));
  const best = each.reduce<Reach | undefined>(
    (least, reach) => (reach.neededM < (least?.neededM ?? Infinity) ? reach : least),
    undefined,
  );
  return { each, best };
}

/** The place of a section a hose comes to first: where it begins, when that is in the section. */
export function nearestOf(ways: HoseWays, region: Region): HosePlace | undefined {
  const start = ways.stand?.way[0];
  if (start !== undefined && regionContains(region, start)) return { at: start, lengthM: 0 };
  return nearestAlong(ways, [region.outer, ...region.holes].map(closed));
}

/** A ring as a line that ends where it begins. */
export function closed(ring: readonly YardPoint[]): readonly YardPoint[] {
  return [...ring, ...ring.slice(0, 1)];
}
