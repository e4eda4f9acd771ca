import type { Problem } from '../problems.ts';
import type { YardPoint } from '../spaces.ts';
import { clearGround, depthInWallM, MOST_IN_WALL_M } from './clearGround.ts';
import type { HoseGround } from './hoseGround.ts';
import type { SectionHose } from './hosePlan.ts';
import { type HoseWays, hoseWays } from './hoseWays.ts';
import { reachOf } from './sectionReach.ts';

/** A section with the lines the applicator is on there. */
export interface HosedSection {
  readonly hosed: SectionHose;
  readonly lines: readonly (readonly YardPoint[])[];
}

/** What is to be told of a laid hose: spigots that serve nothing, sections it does not get to, and why. */
export function hoseWarnings(
  hose: HoseGround,
  all: readonly HoseWays[],
  sections: readonly HosedSection[],
): readonly Problem[] {
  if (all.length === 0) return [{ kind: 'plan/no-spigot', where: { thing: 'The hose' }, facts: {} }];
  const spigots = all.flatMap((ways) => spigotTrouble(hose, ways, sections));
  // Where every spigot is at fault, that alone is the trouble.
  if (spigots.length === all.length) return spigots;
  return [...spigots, ...noWay(hose, sections), ...tooShort(hose, sections)];
}

function spigotTrouble(
  hose: HoseGround,
  { spigot, stand }: HoseWays,
  sections: readonly HosedSection[],
): readonly Problem[] {
  const where = { thing: spigot.name };
  const depthM = stand === null ? depthInWallM(clearGround(hose), spigot.at) : 0;
  if (depthM > MOST_IN_WALL_M) {
    return [{ kind: 'plan/spigot-in-wall', where, facts: { depthM, mostM: MOST_IN_WALL_M } }];
  }
  const reaches = sections.some(({ hosed: { bySpigot } }) =>
    bySpigot.some(({ spigotId, neededM }) => spigotId === spigot.id && neededM !== null),
  );
  if (reaches || sections.length === 0) return [];
  return [{ kind: 'plan/spigot-shut-in', where, facts: closedBy({ ...hose, spigots: [spigot] }, sections) }];
}

/** Sections no hose gets to, of any length. */
function noWay(hose: HoseGround, sections: readonly HosedSection[]): readonly Problem[] {
  const shut = sections.filter(({ hosed }) => hosed.neededM === null);
  if (shut.length === 0) return [];
  return [{ kind: 'plan/hose-no-way', where: { thing: namesOf(shut) }, facts: closedBy(hose, shut) }];
}

/** Sections a longer hose would get to. */
function tooShort(hose: HoseGround, sections: readonly HosedSection[]): readonly Problem[] {
  const { lengthM } = hose;
  const beyond = sections.filter(({ hosed }) => hosed.isBeyond && hosed.neededM !== null);
  if (beyond.length === 0) return [];
  const neededM = beyond.reduce((most, { hosed }) => Math.max(most, hosed.neededM ?? 0), 0);
  const facts = { lengthM, neededM, isAll: beyond.length === sections.length };
  return [{ kind: 'plan/hose-too-short', where: { thing: namesOf(beyond) }, facts }];
}

/** Whether it is only what the hose keeps off that leaves it no way. */
function closedBy(
  hose: HoseGround,
  sections: readonly HosedSection[],
): { readonly clearanceM: number; readonly isByClearance: boolean } {
  const { clearanceM } = hose;
  if (clearanceM === 0) return { clearanceM, isByClearance: false };
  const ground = clearGround({ ...hose, clearanceM: 0 });
  const all = hose.spigots.map((spigot) => hoseWays(ground, spigot));
  return { clearanceM, isByClearance: sections.some(({ lines }) => reachOf(all, lines).best !== undefined) };
}

/** "A1", "A1 and A2", "A1, A2 and A3". */
function namesOf(sections: readonly HosedSection[]): string {
  const ids = sections.map(({ hosed }) => hosed.sectionId);
  return ids.length < 2 ? (ids[0] ?? '') : `${ids.slice(0, -1).join(', ')} and ${ids.at(-1)}`;
}
