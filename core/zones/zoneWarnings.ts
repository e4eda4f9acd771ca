import { tracedRing } from '../curves/index.ts';
import {
  BoxIndex,
  intersectRegions,
  isApart,
  nearBox,
  regionContains,
  regionsAreaM2,
} from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import type { YardPoint } from '../spaces.ts';
import type { Outline, OutlineKind } from '../yard.ts';
import type { ResolvedZone, ZoneOverlap } from './resolved.ts';
import type { Shape } from './shape.ts';

/** Overlaps and leavings below a square centimetre come from two hands tracing one edge, and are not told. */
export const TOLD_AREA_M2 = 1e-4;

/** Corners looked at before an overlay is asked. */
const MOST_SPOTS = 16;

/** What only makes sense in a lawn; a house, a drive or a pond may well lie between the zones. */
const MEANT_FOR_A_ZONE: readonly OutlineKind[] = ['bed', 'tree', 'keep-off', 'check-plot'];

/**
 * A warning for each shape that is meant for a zone and lies in none.
 *
 * @param inside shapes already known to lie in a zone
 */
export function outsideWarnings(
  shapes: readonly Shape[],
  zones: readonly Shape[],
  inside: ReadonlySet<Shape>,
): Problem[] {
  const index = new BoxIndex(zones, ({ bounds }) => bounds);
  return shapes.flatMap((shape) => {
    const { id, name, kind, outer } = shape.outline;
    if (!MEANT_FOR_A_ZONE.includes(kind) || inside.has(shape)) return [];
    const meets = index.meeting(shape.bounds).some((zone) => shareGround(zone, shape));
    const at = tracedRing(outer)[0];
    if (meets || at === undefined) return [];
    return [{ kind: 'shape/cut-out-outside', where: { outlineId: id, name, at }, facts: {} }];
  });
}

/** A warning for each zone of which nothing is left to treat. */
export function coveredWarnings(zones: readonly ResolvedZone[]): Problem[] {
  return zones
    .filter((zone) => zone.treatedAreaM2 < TOLD_AREA_M2)
    .map(({ zoneId, name }) => ({
      kind: 'shape/covered-whole',
      where: { outlineId: zoneId, name },
      facts: {},
    }));
}

/** A warning for each piece of ground in two zones, at the zone that does not own it. */
export function overlapWarnings(overlaps: readonly ZoneOverlap[], outlines: readonly Outline[]): Problem[] {
  if (overlaps.length === 0) return [];
  const byId = new Map(outlines.map((outline) => [outline.id, outline]));
  return overlaps.flatMap(({ ownerId, otherId, by, areaM2, regions }) => {
    const other = byId.get(otherId);
    const owner = byId.get(ownerId);
    const at = regions[0]?.outer[0];
    if (!other || !owner || !at) return [];
    const where = { outlineId: other.id, name: other.name, at };
    return [{ kind: 'shape/overlaps', where, facts: { ownerName: owner.name, by, overlapM2: areaM2 } }];
  });
}

function shareGround(zone: Shape, shape: Shape): boolean {
  // Most of what a zone's box meets and the zone does not hold is simply beside it.
  if (shape.regions.every(({ outer }) => isApart(zone.regions, outer))) return false;
  const holds = ({ regions }: Shape, point: YardPoint) => regions.some((one) => regionContains(one, point));
  // A bed with a spot well inside it that is in the lawn needs no overlay to tell; one that only touches does.
  if (spotsOf(shape).some((spot) => holds(zone, spot) && holds(shape, spot))) return true;
  return regionsAreaM2(intersectRegions(nearBox(zone.regions, shape.bounds), shape.regions)) >= TOLD_AREA_M2;
}

/** The middle of its box, and half-way there from each corner; no more than a handful, for most beds are small. */
function spotsOf({ bounds, regions }: Shape): readonly YardPoint[] {
  const middle = { xM: (bounds.minXM + bounds.maxXM) / 2, yM: (bounds.minYM + bounds.maxYM) / 2 };
  const corners = (regions[0]?.outer ?? []).slice(0, MOST_SPOTS);
  return [middle, ...corners.map(({ xM, yM }) => ({ xM: (xM + middle.xM) / 2, yM: (yM + middle.yM) / 2 }))];
}
