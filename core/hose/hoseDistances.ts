import type { Section } from '../sections/index.ts';
import { farthestAlong, nearestAlong } from './alongLines.ts';
import { clearGround } from './clearGround.ts';
import type { HoseGround } from './hoseGround.ts';
import { type HoseWays, hoseWays } from './hoseWays.ts';

/** How much hose a section takes. */
export interface HoseDistance {
  readonly sectionId: string;
  /** The spigot from which it takes the least; null when no hose gets to all of it. */
  readonly spigotId: string | null;
  /** To its farthest place; Infinity without a spigot. */
  readonly neededM: number;
  /** To its nearest place, from that spigot; Infinity without one. */
  readonly nearestM: number;
}

/**
 * The hose each section takes to be reached up to its edge, from the best spigot: before passes are laid.
 *
 * @returns in the order of the sections
 * Accuracy: see farthestAlong
 */
export function hoseDistances(
  hose: HoseGround,
  sections: readonly Pick<Section, 'id' | 'region'>[],
): readonly HoseDistance[] {
  const ground = clearGround(hose);
  const all = hose.spigots.map((spigot) => hoseWays(ground, spigot));
  return sections.map(({ id, region: { outer } }) => {
    const edge = [[...outer, ...outer.slice(0, 1)]];
    const best = leastNeeded(all, edge);
    return {
      sectionId: id,
      spigotId: best?.ways.spigot.id ?? null,
      neededM: best?.neededM ?? Infinity,
      nearestM: (best && nearestAlong(best.ways, edge)?.lengthM) ?? Infinity,
    };
  });
}

/** The spigot from which the farthest place of some lines takes the least hose; the first of equals. */
function leastNeeded(
  all: readonly HoseWays[],
  lines: readonly (readonly { readonly xM: number; readonly yM: number }[])[],
): { readonly ways: HoseWays; readonly neededM: number } | undefined {
  let best: { readonly ways: HoseWays; readonly neededM: number } | undefined;
  for (const ways of all) {
    const neededM = farthestAlong(ways, lines)?.lengthM ?? Infinity;
    if (neededM < (best?.neededM ?? Infinity)) best = { ways, neededM };
  }
  return best;
}
