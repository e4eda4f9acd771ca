import { distanceM } from '../kernel/index.ts';
import { makeWalkable, type Pass, planPasses, type Walkable } from '../passes/index.ts';
import type { Section } from '../sections/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { ResolvedYard } from '../zones/index.ts';
import { headingDegOf } from './headingDegOf.ts';
import type { PlanRequest, SectionFigures } from './plan.ts';

/**
 * Passes for every section in turn, each begun where the one before ended.
 *
 * @param onProgress told the part done, from 0 to 1
 * @returns undefined when cancelled; the walk from one section to the next counts as the next one's
 */
export function walkSections(
  resolved: ResolvedYard,
  sections: readonly Section[],
  { swathM, heading, paceMPerS }: PlanRequest,
  isCancelled: () => boolean,
  onProgress: (fraction: number) => void,
): { passes: Pass[]; sectionFigures: SectionFigures[] } | undefined {
  const walkables = new Map(resolved.zones.map((zone) => [zone.zoneId, makeWalkable(zone.turf)]));
  const headingDeg = headingDegOf(heading);
  const passes: Pass[] = [];
  const sectionFigures: SectionFigures[] = [];
  let zoneId: string | undefined;
  for (const [place, section] of sections.entries()) {
    if (isCancelled()) return undefined;
    const startAt = passes.at(-1)?.line.at(-1) ?? null;
    const planned = planPasses(section, { swathM, headingDeg, startAt });
    let here = startAt;
    let offLengthM = 0;
    for (const pass of planned.passes) {
      // From one zone to another the ground between is not known: straight across.
      const walkable = zoneId === section.zoneId ? walkables.get(zoneId) : undefined;
      offLengthM += here === null ? 0 : wayM(here, pass.line[0] as YardPoint, walkable);
      here = pass.line.at(-1) as YardPoint;
      zoneId = section.zoneId;
    }
    passes.push(...planned.passes.map((pass) => ({ ...pass, order: passes.length + pass.order })));
    const onLengthM = planned.passes.reduce((sum, pass) => sum + pass.lengthM, 0);
    sectionFigures.push({
      sectionId: section.id,
      areaM2: section.areaM2,
      passes: planned.passes.length,
      onLengthM,
      offLengthM,
      timeS: (onLengthM + offLengthM) / paceMPerS,
      headingDeg: planned.headingDeg,
    });
    onProgress((place + 1) / sections.length);
  }
  return { passes, sectionFigures };
}

function wayM(from: YardPoint, to: YardPoint, walkable: Walkable | undefined): number {
  return walkable === undefined ? distanceM(from, to) : walkable.wayM(from, to);
}
