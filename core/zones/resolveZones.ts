import { areaSigmaM2 } from '../area/index.ts';
import {
  intersectRegions,
  orientRegion,
  regionsAreaM2,
  type RingBounds,
  ringBounds,
  subtractRegions,
} from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import type { Region } from '../spaces.ts';
import { CUT_OUT_KINDS, type Outline, type OutlineKind } from '../yard.ts';
import { checkOutline } from './checkOutline.ts';
import type { ResolvedYard, ResolvedZone, ZoneOverlap } from './resolved.ts';

/** Overlaps and leavings below a square centimetre come from two hands tracing one edge, and are not told. */
const TOLD_AREA_M2 = 1e-4;

/**
 * What is treated, zone by zone: turf = zone - cut-outs - ground owned by zones drawn earlier; treated = turf -
 * keep-offs - check plots. Cut-outs may overlap one another or cross the edge.
 *
 * @param cornerSigmaM standard deviation of one corner; null = not stated, and no area then carries one
 * Problems: shape/ problems of every outline that cannot stand, each with its place
 * Accuracy: perimeter times the kernel grid; held against a second kernel in tests/oracle/netArea.test.ts
 * Cost: n log n in the vertices of each zone and of what touches its box
 */
export function resolveZones(
  outlines: readonly Outline[],
  cornerSigmaM: number | null,
): Result<ResolvedYard> {
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
    zones.slice(0, i).flatMap((earlier) => overlapOf(earlier, zone)),
  );
  const resolved = zones.map((zone, i) =>
    resolveZone(zone, zones.slice(0, i), cutOuts, untreated, cornerSigmaM),
  );
  return ok({
    zones: resolved,
    overlaps,
    warnings: [
      ...shapes.flatMap((shape) => outsideWarning(shape, zones)),
      ...resolved.flatMap(coveredWarning),
      ...overlaps.flatMap((overlap) => overlapWarning(overlap, outlines)),
    ],
  });
}

interface Shape {
  readonly outline: Outline;
  readonly region: Region;
  readonly bounds: RingBounds;
}

function shapeOf(outline: Outline): Shape {
  return { outline, region: orientRegion(outline), bounds: ringBounds(outline.outer) };
}

function resolveZone(
  zone: Shape,
  earlier: readonly Shape[],
  cutOuts: readonly Shape[],
  untreated: readonly Shape[],
  cornerSigmaM: number | null,
): ResolvedZone {
  // Each step takes away from what the step before left, so that the parts add up to the whole.
  const whole = [zone.region];
  const owned = without(whole, touching(zone, earlier));
  const turf = without(owned, touching(zone, cutOuts));
  const treated = without(turf, touching(zone, untreated));
  const grossAreaM2 = regionsAreaM2(whole);
  const ownedAreaM2 = regionsAreaM2(owned);
  const turfAreaM2 = regionsAreaM2(turf);
  return {
    zoneId: zone.outline.id,
    name: zone.outline.name,
    grossAreaM2,
    ownedByOtherAreaM2: owned === whole ? 0 : grossAreaM2 - ownedAreaM2,
    cutOutAreaM2: turf === owned ? 0 : ownedAreaM2 - turfAreaM2,
    turfAreaM2,
    treatedAreaM2: regionsAreaM2(treated),
    sigmaM2: cornerSigmaM === null ? null : areaSigmaM2(treated, cornerSigmaM),
    turf,
    treated,
  };
}

/** The very same regions when nothing is taken away: what is not cut needs no overlay. */
function without(regions: readonly Region[], shapes: readonly Shape[]): readonly Region[] {
  return shapes.length === 0
    ? regions
    : subtractRegions(
        regions,
        shapes.map((shape) => shape.region),
      );
}

function touching(zone: Shape, shapes: readonly Shape[]): readonly Shape[] {
  return shapes.filter((shape) => boxesMeet(zone.bounds, shape.bounds));
}

function boxesMeet(a: RingBounds, b: RingBounds): boolean {
  return a.minXM <= b.maxXM && b.minXM <= a.maxXM && a.minYM <= b.maxYM && b.minYM <= a.maxYM;
}

function overlapOf(owner: Shape, other: Shape): readonly ZoneOverlap[] {
  if (!boxesMeet(owner.bounds, other.bounds)) return [];
  const regions = intersectRegions([owner.region], [other.region]);
  const areaM2 = regionsAreaM2(regions);
  return areaM2 < TOLD_AREA_M2
    ? []
    : [{ ownerId: owner.outline.id, otherId: other.outline.id, areaM2, regions }];
}

/** What only makes sense in a lawn; a house, a drive or a pond may well lie between the zones. */
const MEANT_FOR_A_ZONE: readonly OutlineKind[] = ['bed', 'tree', 'keep-off', 'check-plot'];

function outsideWarning(shape: Shape, zones: readonly Shape[]): readonly Problem[] {
  const { id, name, kind } = shape.outline;
  if (!MEANT_FOR_A_ZONE.includes(kind)) return [];
  const meets = touching(shape, zones).some(
    (zone) => regionsAreaM2(intersectRegions([zone.region], [shape.region])) >= TOLD_AREA_M2,
  );
  const at = shape.outline.outer[0];
  return meets || at === undefined
    ? []
    : [{ kind: 'shape/cut-out-outside', where: { outlineId: id, name, at }, facts: {} }];
}

function coveredWarning(zone: ResolvedZone): readonly Problem[] {
  if (zone.turfAreaM2 >= TOLD_AREA_M2) return [];
  return [{ kind: 'shape/covered-whole', where: { outlineId: zone.zoneId, name: zone.name }, facts: {} }];
}

function overlapWarning(overlap: ZoneOverlap, outlines: readonly Outline[]): readonly Problem[] {
  const other = outlines.find((outline) => outline.id === overlap.otherId);
  const owner = outlines.find((outline) => outline.id === overlap.ownerId);
  const at = overlap.regions[0]?.outer[0];
  if (!other || !owner || !at) return [];
  const where = { outlineId: other.id, name: other.name, at };
  return [{ kind: 'shape/overlaps', where, facts: { otherName: owner.name, overlapM2: overlap.areaM2 } }];
}
