import type { Section } from '../sections/index.ts';
import { clearGround } from './clearGround.ts';
import type { HoseGround } from './hoseGround.ts';
import { hoseWays } from './hoseWays.ts';
import { closed, nearestOf, reachOf } from './sectionReach.ts';

/** How much hose a section takes. */
export interface HoseDistance {
  readonly sectionId: string;
  /** The spigot from which it takes the least; null when no hose gets to all of it. */
  readonly spigotId: string | null;
  /** To its farthest place; Infinity without a spigot. */
  readonly neededM: number;
  /** To its nearest place, from that spigot; 0 where the spigot is in it, Infinity without one. */
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
  return sections.map(({ id, region }) => {
    const { best } = reachOf(all, [closed(region.outer)]);
    return {
      sectionId: id,
      spigotId: best?.ways.spigot.id ?? null,
      neededM: best?.neededM ?? Infinity,
      nearestM: (best && nearestOf(best.ways, region)?.lengthM) ?? Infinity,
    };
  });
}
