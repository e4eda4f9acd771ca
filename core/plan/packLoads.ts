import { interiorPoint } from '../kernel/index.ts';
import { Defect } from '../result.ts';
import type { Section } from '../sections/index.ts';
import { sum } from '../units/index.ts';
import type { ResolvedZone } from '../zones/index.ts';
import type { PlanLoad, PlanRequest } from './plan.ts';
import { type Parcel, shareLoads } from './shareLoads.ts';

/** What is packed: sections, and the order in which they were cut to fill one load after the other. */
interface Cargo {
  readonly sections: readonly Section[];
  readonly filling: readonly string[];
}

/**
 * Sections put together in loads: each its own, or with others where that takes fewer fills. Which of them share is
 * chosen so that little is walked between.
 *
 * @param zones of these sections: a load holds ground in the terms of their `amountFactor`
 * @returns loads numbered by their first section; areas in the same terms
 * Cost: see shareLoads
 */
export function packLoads(
  { sections, filling }: Cargo,
  zones: readonly Pick<ResolvedZone, 'zoneId' | 'amountFactor'>[],
  { policy, loadAreaM2 }: Pick<PlanRequest, 'policy' | 'loadAreaM2'>,
): PlanLoad[] {
  const factors = new Map(zones.map((zone) => [zone.zoneId, zone.amountFactor]));
  const turns = new Map(filling.map((id, turn) => [id, turn]));
  const parcels = sections.map(({ id, zoneId, areaM2, region }): Parcel => {
    const [factor, turn] = [factors.get(zoneId), turns.get(id)];
    if (factor === undefined || turn === undefined) throw new Defect(`section ${id} was not cut`);
    return { id, areaM2: areaM2 * factor, at: interiorPoint(region), turn };
  });
  const place = new Map(sections.map(({ id }, index) => [id, index]));
  const placeOf = ({ id }: Parcel): number => place.get(id) ?? 0;
  return shareLoads(parcels, policy, loadAreaM2)
    .map((load) => load.toSorted((a, b) => placeOf(a) - placeOf(b)))
    .sort(([a], [b]) => (a === undefined || b === undefined ? 0 : placeOf(a) - placeOf(b)))
    .map((load, index) => ({
      number: index + 1,
      sectionIds: load.map(({ id }) => id),
      areaM2: sum(load.map(({ areaM2 }) => areaM2)),
    }));
}
