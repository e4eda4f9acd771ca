import {
  type AreaSpread,
  areaGradient,
  areaSpread,
  cutLineSource,
  pointBaseOf,
  type SourceRing,
  type Sureness,
  surenessOf,
} from '../area/index.ts';
import { boxesMeet } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import type { Outline } from '../yard.ts';
import type { Ground } from './ground.ts';
import { shapeOf } from './shape.ts';
import { stripShapes } from './strips.ts';
import { sourcesOf } from './zoneGradient.ts';

/** A straight border between two sections, flagged at its ends. */
export interface CutEnds {
  readonly from: YardPoint;
  readonly to: YardPoint;
}

/** A part of a zone's treated ground. */
export interface ZonePart {
  readonly zoneId: string;
  readonly region: Region;
}

/**
 * How sure parts of zones are that are cut along lines. The ends of a cut line are flagged with an error of their own,
 * as large as the yard says, else as the zone's corners have; two parts along one line share it.
 *
 * @param parts of treated ground of a yard that resolves
 * @param cutLines all that the parts' edges may lie on besides outlines
 * @returns one spread a part, in order
 * Cost: log n an edge
 */
export function partSpreads(
  ground: Ground,
  parts: readonly ZonePart[],
  cutLines: readonly CutEnds[],
): readonly AreaSpread[] {
  const sureness = surenessOf(ground);
  const cuts = cutLines.map(({ from, to }) => cutLineSource(from, to));
  const zones = new Map<string, { sources: readonly SourceRing[]; sureness: Sureness }>();
  return parts.map(({ zoneId, region }) => {
    const zone = zones.get(zoneId) ?? zoneOf(zoneId, ground, cuts, sureness);
    zones.set(zoneId, zone);
    return areaSpread(areaGradient([region], zone.sources), zone.sureness);
  });
}

function zoneOf(zoneId: string, ground: Ground, cuts: readonly SourceRing[], sureness: Sureness) {
  const { outlines, details } = ground;
  const zone = outlines.find(({ id }) => id === zoneId);
  const own = zone === undefined ? null : pointBaseOf(zone, ground).sigmaM;
  const sigmaM = sureness.baseOf(null).sigmaM ?? own;
  const cutBase = { by: details.cornerSigmaM === null ? 'outline' : 'yard', sigmaM, scale: null } as const;
  const others =
    zone === undefined ? outlines : outlines.filter((other) => other !== zone && mayBound(other, zone));
  return {
    sources: [...(zone === undefined ? [] : sourcesOf(zone)), ...cuts, ...others.flatMap(sourcesOf)],
    sureness: {
      ...sureness,
      baseOf: (outlineId: string | null) => (outlineId === null ? cutBase : sureness.baseOf(outlineId)),
    },
  };
}

/** Whether an outline or a strip along it comes near a zone. */
function mayBound(outline: Outline, zone: Outline): boolean {
  const { bounds } = shapeOf(zone);
  return [shapeOf(outline), ...stripShapes(outline)].some((shape) => boxesMeet(shape.bounds, bounds));
}
