import { sigmaOfSum, timesSpread } from '../area/index.ts';
import type { Section } from '../sections/index.ts';
import { type Ground, partSpreads } from '../zones/index.ts';
import type { GroundPlan } from './plan.ts';

/**
 * One standard deviation of the ground of each load, by its number, in the terms amounts are worked out in; what its
 * sections share, as a cut line between two of them, is not counted twice. null where it is not stated.
 *
 * @param ground the yard the plan was made of
 */
export function loadSigmas(
  ground: Ground,
  { sections, cutLines, loads, resolved }: Pick<GroundPlan, 'sections' | 'cutLines' | 'loads' | 'resolved'>,
): ReadonlyMap<number, number | null> {
  const factors = new Map(resolved.zones.map((zone) => [zone.zoneId, zone.amountFactor]));
  const spreads = partSpreads(ground, sections, cutLines);
  const spreadOf = new Map(sections.map(({ id }, place) => [id, spreads[place]]));
  const sectionOf = new Map(sections.map((section) => [section.id, section]));
  return new Map(
    loads.map(({ number, sectionIds }) => {
      const own = sectionIds.flatMap((id) => {
        const [section, spread] = [sectionOf.get(id), spreadOf.get(id)];
        return section === undefined || spread === undefined ? [] : [timesSpread(spread, factorOf(section))];
      });
      return [number, own.length < sectionIds.length ? null : sigmaOfSum(own)] as const;
    }),
  );

  function factorOf({ zoneId }: Section): number {
    return factors.get(zoneId) ?? 1;
  }
}
