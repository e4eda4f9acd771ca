import type { GroundPlan } from '../../core/plan/index.ts';

/** The hose of a plan as it stands in the summary of its JSON; lengths in metres. */
export interface HoseFigures {
  /** Names of the spigots it may start from, in one line. */
  readonly spigot: string;
  readonly hoseM: number;
  /** That reaches every section from its best spigot; null when no hose does. */
  readonly shortestHoseM: number | null;
  readonly overWetM: number;
  readonly sections: readonly SectionFigures[];
}

interface SectionFigures {
  readonly id: string;
  /** Its best spigot; null when no hose gets to all of it. */
  readonly spigot: string | null;
  readonly neededM: number | null;
  readonly isBeyond: boolean;
  readonly bends: readonly string[];
  readonly overWetM: number;
}

/** @returns null where no hose was asked for */
export function hoseFigures({ request, hose }: GroundPlan): HoseFigures | null {
  if (request.hose === null || hose === null) return null;
  const { spigots, lengthM } = request.hose;
  const names = new Map(spigots.map(({ id, name }) => [id, name]));
  return {
    spigot: spigots.map(({ name }) => name).join(', '),
    hoseM: lengthM,
    shortestHoseM: hose.shortestHoseM,
    overWetM: hose.overWetM,
    sections: hose.sections.map(({ sectionId, spigotId, neededM, isBeyond, bends, overWetM }) => ({
      id: sectionId,
      spigot: spigotId === null ? null : (names.get(spigotId) ?? null),
      neededM,
      isBeyond,
      bends: bends.map(({ name }) => name),
      overWetM,
    })),
  };
}
