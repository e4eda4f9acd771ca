import type { Pass } from '../passes/index.ts';
import type { Section } from '../sections/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { sum } from '../units/index.ts';
import { clearGround } from './clearGround.ts';
import type { HoseGround } from './hoseGround.ts';
import type { HosePlan, SectionHose } from './hosePlan.ts';
import { type HoseWays, hoseWays } from './hoseWays.ts';
import { type HosedSection, hoseWarnings } from './hoseWarnings.ts';
import { lengthInsideM } from './lengthInside.ts';
import { nameBends } from './nameBends.ts';
import { reachOfWays } from './reachRegions.ts';
import { closed, nearestOf, reachOf } from './sectionReach.ts';

/** What of a plan the hose is laid for. */
export interface HoseWork {
  /** In walking order. */
  readonly sections: readonly Pick<Section, 'id' | 'region'>[];
  readonly passes: readonly Pick<Pass, 'sectionId' | 'line'>[];
}

/**
 * Lays the hose for every section of a plan, each from the spigot that takes the least of it.
 *
 * A section needs the hose to the farthest place of its passes; without passes, of its edge. It lies to the nearest
 * place of the section when that is begun, and is counted where it lies on sections treated before.
 * Accuracy: lengths see farthestAlong; overlap exact but for rounding
 * Cost: see hoseWays; ways to the farthest places of all passes from every spigot
 */
export function planHose(hose: HoseGround, work: HoseWork): HosePlan {
  const ground = clearGround(hose);
  const all = hose.spigots.map((spigot) => hoseWays(ground, spigot));
  const wet: Region[] = [];
  const hosed = work.sections.map((section): HosedSection => {
    const lines = linesOf(section, work.passes);
    const { each, best } = reachOf(all, lines);
    const laid = best === undefined ? NOT_LAID : lay(hose, best.ways, section.region, wet);
    wet.push(section.region);
    const neededM = best?.neededM ?? Infinity;
    const own: SectionHose = {
      sectionId: section.id,
      spigotId: best?.ways.spigot.id ?? null,
      neededM: orNull(neededM),
      isBeyond: neededM > hose.lengthM,
      bySpigot: each.map((reach) => ({ spigotId: reach.ways.spigot.id, neededM: orNull(reach.neededM) })),
      ...laid,
    };
    return { hosed: own, lines };
  });
  const sections = hosed.map((each) => each.hosed);
  const shortestHoseM = sections.some(({ neededM }) => neededM === null)
    ? null
    : sections.reduce((most, { neededM }) => Math.max(most, neededM ?? 0), 0);
  return {
    sections,
    shortestHoseM,
    overWetM: sum(sections.map(({ overWetM }) => overWetM)),
    reach: reachOfWays(ground, all, hose.lengthM),
    warnings: hoseWarnings(hose, all, hosed),
  };
}

type Laid = Pick<SectionHose, 'line' | 'lengthM' | 'bends' | 'overWetM'>;

const NOT_LAID: Laid = { line: [], lengthM: 0, bends: [], overWetM: 0 };

function lay(hose: HoseGround, ways: HoseWays, region: Region, wet: readonly Region[]): Laid {
  const nearest = nearestOf(ways, region);
  const way = nearest && ways.wayTo(nearest.at);
  if (way === undefined) return NOT_LAID;
  const { line, lengthM } = way;
  return { line, lengthM, bends: nameBends(way, hose), overWetM: lengthInsideM(line, wet) };
}

/** Where the applicator gets to in a section: along its passes, or round its edge where none fits. */
function linesOf(
  { id, region }: HoseWork['sections'][number],
  passes: HoseWork['passes'],
): readonly (readonly YardPoint[])[] {
  const lines = passes.filter(({ sectionId }) => sectionId === id).map(({ line }) => line);
  return lines.length > 0 ? lines : [closed(region.outer)];
}

function orNull(lengthM: number): number | null {
  return lengthM === Infinity ? null : lengthM;
}
