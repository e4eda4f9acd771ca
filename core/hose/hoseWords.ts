import { formatEnough, type UnitSystem } from '../units/index.ts';
import type { HosePlan, SectionHose } from './hosePlan.ts';
import type { HoseGround } from './hoseGround.ts';

/** "hose from front spigot, 62 ft, bends at NE corner of house"; says when it is too short or gets nowhere. */
export function hoseWords(
  { spigotId, neededM, isBeyond, bends }: SectionHose,
  { spigots, lengthM }: Pick<HoseGround, 'spigots' | 'lengthM'>,
  units: UnitSystem,
): string {
  const spigot = spigots.find(({ id }) => id === spigotId);
  if (spigot === undefined || neededM === null) return 'no hose gets to all of it';
  const beyond = isBeyond ? `, ${formatEnough(neededM - lengthM, units)} more than the hose` : '';
  const names = [...new Set(bends.map(({ name }) => name))];
  const round = names.length === 0 ? '' : `, bends at ${listed(names)}`;
  return `hose from ${spigot.name}, ${formatEnough(neededM, units)}${beyond}${round}`;
}

/** Corners that a pulled hose is likely to catch at, each once; none when it slides everywhere. */
export function snagsOf({ sections }: Pick<HosePlan, 'sections'>): readonly string[] {
  const snags = sections.flatMap(({ bends }) => bends.filter(({ maySnag }) => maySnag));
  return [...new Set(snags.map(({ name }) => name))];
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
