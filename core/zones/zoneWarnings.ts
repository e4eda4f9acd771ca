import { tracedRing } from '../curves/index.ts';
import { intersectRegions, regionContains, regionsAreaM2 } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import type { YardPoint } from '../spaces.ts';
import type { Outline, OutlineKind } from '../yard.ts';
import type { ResolvedZone, ZoneOverlap } from './resolved.ts';
import { near, type Shape } from './shape.ts';

/** Overlaps and leavings below a square centimetre come from two hands tracing one edge, and are not told. */
export const TOLD_AREA_M2 = 1e-4;

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
  return shapes.flatMap((shape) => {
    const { id, name, kind, outer } = shape.outline;
    if (!MEANT_FOR_A_ZONE.includes(kind) || inside.has(shape)) return [];
    const meets = near(shape, zones).some((zone) => shareGround(zone, shape));
    const at = tracedRing(outer)[0];
    if (meets || at === undefined) return [];
    return [{ kind: 'shape/cut-out-outside', where: { outlineId: id, name, at }, facts: {} }];
  });
}

/** A warning for each zone of which no turf is left. */
export function coveredWarnings(zones: readonly ResolvedZone[]): Problem[] {
  return zones
    .filter((zone) => zone.turfAreaM2 < TOLD_AREA_M2)
    .map(({ zoneId, name }) => ({
      kind: 'shape/covered-whole',
      where: { outlineId: zoneId, name },
      facts: {},
    }));
}

/** A warning for each piece of ground in two zones, at the zone that does not own it. */
export function overlapWarnings(overlaps: readonly ZoneOverlap[], outlines: readonly Outline[]): Problem[] {
  return overlaps.flatMap(({ ownerId, otherId, areaM2, regions }) => {
    const other = outlines.find((outline) => outline.id === otherId);
    const owner = outlines.find((outline) => outline.id === ownerId);
    const at = regions[0]?.outer[0];
    if (!other || !owner || !at) return [];
    const where = { outlineId: other.id, name: other.name, at };
    return [{ kind: 'shape/overlaps', where, facts: { otherName: owner.name, overlapM2: areaM2 } }];
  });
}

function shareGround(zone: Shape, shape: Shape): boolean {
  const middle = middleOf(shape);
  // A bed whose middle is in the lawn needs no overlay to tell; one that only reaches in does.
  const holdsMiddle = ({ regions }: Shape) => regions.some((region) => regionContains(region, middle));
  if (holdsMiddle(zone) && holdsMiddle(shape)) return true;
  return regionsAreaM2(intersectRegions(zone.regions, shape.regions)) >= TOLD_AREA_M2;
}

function middleOf({ bounds }: Shape): YardPoint {
  return { xM: (bounds.minXM + bounds.maxXM) / 2, yM: (bounds.minYM + bounds.maxYM) / 2 };
}
