import { apportionForDisplay, areaStepM2, type UnitSystem } from '../units/index.ts';
import type { PrintedZone } from './printedZones.ts';
import type { ResolvedYard, ZoneOverlap } from './resolved.ts';

export interface PrintedOverlap extends ZoneOverlap {
  readonly shownM2: number;
}

/**
 * Ground in two zones as shown: what a zone loses to others adds up to what its own row shows as owned by them.
 *
 * @param zones the resolved yard's, as `printedZones` gives them
 * Source: largest remainder within each zone's loss. Shared ground below a square centimetre is in no overlap; where
 * that takes the sum over a rounding edge, the zone's overlaps are rounded each by itself.
 */
export function printedOverlaps(
  { overlaps }: Pick<ResolvedYard, 'overlaps'>,
  zones: readonly PrintedZone[],
  units: UnitSystem,
): readonly PrintedOverlap[] {
  const step = areaStepM2(units);
  const shown = new Map<ZoneOverlap, number>();
  for (const { zoneId, ownedByOtherM2 } of zones) {
    const own = overlaps.filter(({ otherId }) => otherId === zoneId);
    const values = own.map(({ areaM2 }) => areaM2);
    const missing =
      Math.round(ownedByOtherM2 / step) - values.reduce((sum, m2) => sum + Math.floor(m2 / step), 0);
    const figures =
      missing >= 0 && missing <= values.length
        ? apportionForDisplay(values, step, ownedByOtherM2)
        : values.map((areaM2) => Math.round(areaM2 / step) * step);
    for (const [i, overlap] of own.entries()) shown.set(overlap, figures[i] as number);
  }
  return overlaps.map((overlap) => ({ ...overlap, shownM2: shown.get(overlap) ?? overlap.areaM2 }));
}
