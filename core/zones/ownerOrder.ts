import { regionsAreaM2 } from '../kernel/index.ts';
import type { OverlapRule } from '../yard.ts';
import type { Shape } from './shape.ts';

/** Areas apart by less than this part of a square metre are the same: two copies of one zone differ by rounding. */
const SAME_PER_M2 = 1e6;

/**
 * Zones in the order in which they own the ground they share: each owns what none before it holds. A zone that
 * claims its overlaps goes before every zone that does not; among equals the rule decides, by gross area where it
 * asks for size, and what it leaves equal is settled by the order of drawing. One order for all zones, so that
 * ground in three of them has one owner too.
 *
 * @param zones in the order they were drawn
 */
export function ownerOrder(zones: readonly Shape[], rule: OverlapRule): readonly Shape[] {
  const ranks = zones.map((zone, drawn) => ({ zone, drawn, size: rankSize(zone, rule) }));
  const backwards = rule === 'drawn-last' ? -1 : 1;
  return ranks
    .sort(
      (a, b) =>
        Number(b.zone.outline.claimsOverlaps) - Number(a.zone.outline.claimsOverlaps) ||
        a.size - b.size ||
        backwards * (a.drawn - b.drawn),
    )
    .map(({ zone }) => zone);
}

function rankSize({ regions }: Shape, rule: OverlapRule): number {
  if (rule !== 'smaller' && rule !== 'larger') return 0;
  const size = Math.round(regionsAreaM2(regions) * SAME_PER_M2);
  return rule === 'smaller' ? size : -size;
}
