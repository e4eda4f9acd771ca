import type { UnitSystem } from '../../core/yard.ts';
import { printedZones, type ResolvedYard } from '../../core/zones/index.ts';

type ByZone = ReadonlyMap<string, number>;
const KNOWN: Readonly<Record<UnitSystem, WeakMap<ResolvedYard, ByZone>>> = {
  us: new WeakMap(),
  metric: new WeakMap(),
};

/**
 * A zone's treated area as every part of the screen and the sheet shows it: rounded among all zones, so that a
 * label never differs from its row in the schedule. Undefined for what is no zone.
 */
export function shownTreatedM2(
  resolved: ResolvedYard | null,
  units: UnitSystem,
  zoneId: string | undefined,
): number | undefined {
  if (resolved === null || zoneId === undefined) return undefined;
  let byZone = KNOWN[units].get(resolved);
  if (byZone === undefined) {
    byZone = new Map(printedZones(resolved, units).map((zone) => [zone.zoneId, zone.treatedM2]));
    KNOWN[units].set(resolved, byZone);
  }
  return byZone.get(zoneId);
}
