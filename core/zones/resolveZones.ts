import { areaSpread, sigmaOf, type Sureness, surenessOf } from '../area/index.ts';
import { BoxIndex } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import { CUT_OUT_KINDS, type OverlapRule } from '../yard.ts';
import { checkOutline } from './checkOutline.ts';
import type { Ground } from './ground.ts';
import { ownerOrder } from './ownerOrder.ts';
import type { ResolvedYard, ResolvedZone, ZoneOverlap } from './resolved.ts';
import { type Shape, shapeOf } from './shape.ts';
import { stripShapes } from './strips.ts';
import { untreatedOf } from './untreated.ts';
import { zoneGradient } from './zoneGradient.ts';
import { type ZoneGround, zoneGround } from './zoneGround.ts';
import { slopeWarnings, type ZoneSlope, zoneSlope } from './zoneSlope.ts';
import { coveredWarnings, outsideWarnings, overlapWarnings, TOLD_AREA_M2 } from './zoneWarnings.ts';

/**
 * What is treated, zone by zone: turf = zone - cut-outs - ground owned by other zones (`ownerOrder`); treated =
 * turf - keep-offs - keep-off strips - check plots. Cut-outs may overlap one another or cross the edge.
 *
 * Problems: shape/ problems of every outline that cannot stand, each with its place
 * Accuracy: perimeter times the kernel grid; held against a second kernel in tests/oracle/netArea.test.ts
 * Cost: n log n in the vertices of each zone and of what touches its edge; log n an edge for the rest; a zone
 * near which nothing changed since the last time costs nothing
 */
export function resolveZones({ outlines, pictures, elevations, details }: Ground): Result<ResolvedYard> {
  const problems = outlines.flatMap((outline): readonly Problem[] => {
    const checked = checkOutline(outline);
    return checked.ok ? [] : checked.problems;
  });
  const [first, ...more] = problems;
  if (first !== undefined) return { ok: false, problems: [first, ...more] };

  const shapes = outlines.map(shapeOf);
  const zones = shapes.filter(({ outline }) => outline.kind === 'zone');
  const cutOuts = shapes.filter(({ outline }) => (CUT_OUT_KINDS as readonly string[]).includes(outline.kind));
  const plots = shapes.filter(({ outline }) => outline.kind === 'keep-off' || outline.kind === 'check-plot');
  const strips = outlines.flatMap(stripShapes);
  const grounds = groundsOf(zones, { cutOuts, untreated: [...plots, ...strips] }, details.overlapRule);
  const sureness = surenessOf({ outlines, pictures, details });
  const resolved = grounds.map((ground) => ({
    ...resolvedZone(ground, sureness),
    ...zoneSlope(ground.zone.outline, ground.treated.regions, elevations, details.amountsBy),
  }));
  const overlaps = grounds.flatMap((ground) => overlapsOf(ground, details.overlapRule));
  const inside = new Set(grounds.flatMap(({ turf, treated }) => [...turf.whole, ...treated.whole]));
  return ok({
    zones: resolved,
    overlaps,
    strips: strips.flatMap((shape) => shape.strips ?? []),
    untreated: untreatedOf([...cutOuts, ...plots], strips),
    warnings: [
      ...outsideWarnings([...cutOuts, ...plots], zones, inside),
      ...coveredWarnings(resolved),
      ...overlapWarnings(overlaps, outlines),
      ...slopeWarnings(resolved),
    ],
  });
}

interface Taking {
  readonly cutOuts: readonly Shape[];
  readonly untreated: readonly Shape[];
}

/** In the order of the zones given. */
function groundsOf(zones: readonly Shape[], taking: Taking, rule: OverlapRule): readonly ZoneGround[] {
  const byBounds = ({ bounds }: Shape) => bounds;
  const [zoneIndex, cutOuts, untreated] = [zones, taking.cutOuts, taking.untreated].map(
    (shapes) => new BoxIndex(shapes, byBounds),
  ) as [BoxIndex<Shape>, BoxIndex<Shape>, BoxIndex<Shape>];
  const grounds = new Map<Shape, ZoneGround>();
  for (const zone of ownerOrder(zones, rule)) {
    const { bounds } = zone;
    const owners = zoneIndex.meeting(bounds).flatMap((other) => grounds.get(other) ?? []);
    const takers = { owners, cutOuts: cutOuts.meeting(bounds), untreated: untreated.meeting(bounds) };
    grounds.set(zone, zoneGround(zone, takers));
  }
  return zones.flatMap((zone) => grounds.get(zone) ?? []);
}

function resolvedZone(ground: ZoneGround, sureness: Sureness): Omit<ResolvedZone, keyof ZoneSlope> {
  const spread = areaSpread(zoneGradient(ground), sureness);
  const { grossAreaM2, ownAreaM2, turfAreaM2, treatedAreaM2, turf, treated } = ground;
  return {
    zoneId: ground.zone.outline.id,
    name: ground.zone.outline.name,
    grossAreaM2,
    ownedByOtherAreaM2: grossAreaM2 - ownAreaM2,
    cutOutAreaM2: ownAreaM2 - turfAreaM2,
    turfAreaM2,
    treatedAreaM2,
    // Nothing is left to be sure of; nought would read as exact.
    sigmaM2: treated.regions.length === 0 ? null : sigmaOf(spread),
    spread,
    turf: turf.regions,
    treated: treated.regions,
  };
}

function overlapsOf({ zone, shared }: ZoneGround, rule: OverlapRule): readonly ZoneOverlap[] {
  const other = zone.outline;
  return shared
    .filter(({ areaM2 }) => areaM2 >= TOLD_AREA_M2)
    .map(({ owner, areaM2, regions }) => {
      const isClaimed = owner.outline.claimsOverlaps && !other.claimsOverlaps;
      const by = isClaimed ? 'claimed' : rule;
      return { ownerId: owner.outline.id, otherId: other.id, by, areaM2, regions };
    });
}
