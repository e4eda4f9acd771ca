import type { ResolvedYard, ResolvedZone } from './resolved.ts';

export type ZoneTotals = Pick<
  ResolvedZone,
  'grossAreaM2' | 'cutOutAreaM2' | 'ownedByOtherAreaM2' | 'turfAreaM2' | 'treatedAreaM2' | 'sigmaM2'
>;

/**
 * The sums of a yard's zones. No ground is in two zones (overlaps are owned by one), so sums count it once.
 *
 * @returns sigmaM2 null as soon as one zone's is not stated
 * Accuracy: sigmaM2 takes the zones' errors as independent (root of the sum of squares). A corner that two
 * zones share moves area from one to the other, so for zones that touch this overstates the total's sigma.
 */
export function zoneTotals(resolved: ResolvedYard): ZoneTotals {
  const { zones } = resolved;
  const sum = (areaOf: (zone: ResolvedZone) => number): number =>
    zones.reduce((total, zone) => total + areaOf(zone), 0);
  const stated = zones.every((zone) => zone.sigmaM2 !== null);
  return {
    grossAreaM2: sum((zone) => zone.grossAreaM2),
    cutOutAreaM2: sum((zone) => zone.cutOutAreaM2),
    ownedByOtherAreaM2: sum((zone) => zone.ownedByOtherAreaM2),
    turfAreaM2: sum((zone) => zone.turfAreaM2),
    treatedAreaM2: sum((zone) => zone.treatedAreaM2),
    sigmaM2: stated ? Math.sqrt(sum((zone) => (zone.sigmaM2 ?? 0) ** 2)) : null,
  };
}
