import { areaSigmaM2 } from '../area/index.ts';
import { intersectRegions, regionsAreaM2 } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import { CUT_OUT_KINDS } from '../yard.ts';
import { checkOutline } from './checkOutline.ts';
import type { Ground } from './ground.ts';
import type { ResolvedYard, ResolvedZone, ZoneOverlap } from './resolved.ts';
import { near, type Shape, shapeOf } from './shape.ts';
import { takeAway } from './takeAway.ts';
import { coveredWarnings, outsideWarnings, overlapWarnings, TOLD_AREA_M2 } from './zoneWarnings.ts';

/**
 * What is treated, zone by zone: turf = zone - cut-outs - ground owned by zones drawn earlier; treated = turf -
 * keep-offs - check plots. Cut-outs may overlap one another or cross the edge.
 *
 * Problems: shape/ problems of every outline that cannot stand, each with its place
 * Accuracy: perimeter times the kernel grid; held against a second kernel in tests/oracle/netArea.test.ts
 * Cost: n log n in the vertices of each zone and of what touches its edge; log n an edge for the rest
 */
export function resolveZones({ outlines, details }: Ground): Result<ResolvedYard> {
  const { cornerSigmaM } = details;
  const problems = outlines.flatMap((outline): readonly Problem[] => {
    const checked = checkOutline(outline);
    return checked.ok ? [] : checked.problems;
  });
  const [first, ...more] = problems;
  if (first !== undefined) return { ok: false, problems: [first, ...more] };

  const shapes = outlines.map(shapeOf);
  const zones = shapes.filter(({ outline }) => outline.kind === 'zone');
  const cutOuts = shapes.filter(({ outline }) => (CUT_OUT_KINDS as readonly string[]).includes(outline.kind));
  const untreated = shapes.filter(
    ({ outline }) => outline.kind === 'keep-off' || outline.kind === 'check-plot',
  );
  const overlaps = zones.flatMap((zone, i) =>
    near(zone, zones.slice(0, i)).flatMap((earlier) => overlapOf(earlier, zone)),
  );
  const inside = new Set<Shape>();
  const resolved = zones.map((zone, i) => {
    const taken = { earlier: near(zone, zones.slice(0, i)), cutOuts: near(zone, cutOuts) };
    return resolveZone(zone, { ...taken, untreated: near(zone, untreated) }, cornerSigmaM, inside);
  });
  return ok({
    zones: resolved,
    overlaps,
    warnings: [
      ...outsideWarnings([...cutOuts, ...untreated], zones, inside),
      ...coveredWarnings(resolved),
      ...overlapWarnings(overlaps, outlines),
    ],
  });
}

interface Taken {
  readonly earlier: readonly Shape[];
  readonly cutOuts: readonly Shape[];
  readonly untreated: readonly Shape[];
}

/** Adds to `inside` the shapes found to lie whole in this zone. */
function resolveZone(
  zone: Shape,
  taken: Taken,
  cornerSigmaM: number | null,
  inside: Set<Shape>,
): ResolvedZone {
  // Each step takes away from what the step before left, so that no ground is taken twice.
  const gross = zone.regions;
  const owned = takeAway(gross, taken.earlier);
  const turf = takeAway(owned.regions, taken.cutOuts);
  const treated = takeAway(turf.regions, taken.untreated);
  for (const shape of [...turf.whole, ...treated.whole]) inside.add(shape);
  const grossAreaM2 = regionsAreaM2(gross);
  const ownedAreaM2 = regionsAreaM2(owned.regions);
  const turfAreaM2 = regionsAreaM2(turf.regions);
  return {
    zoneId: zone.outline.id,
    name: zone.outline.name,
    grossAreaM2,
    ownedByOtherAreaM2: owned.regions === gross ? 0 : grossAreaM2 - ownedAreaM2,
    cutOutAreaM2: turf.regions === owned.regions ? 0 : ownedAreaM2 - turfAreaM2,
    turfAreaM2,
    treatedAreaM2: regionsAreaM2(treated.regions),
    sigmaM2: cornerSigmaM === null ? null : areaSigmaM2(treated.regions, cornerSigmaM),
    turf: turf.regions,
    treated: treated.regions,
  };
}

function overlapOf(owner: Shape, other: Shape): readonly ZoneOverlap[] {
  const regions = intersectRegions(owner.regions, other.regions);
  const areaM2 = regionsAreaM2(regions);
  if (areaM2 < TOLD_AREA_M2) return [];
  return [{ ownerId: owner.outline.id, otherId: other.outline.id, areaM2, regions }];
}
