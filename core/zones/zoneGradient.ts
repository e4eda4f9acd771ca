import { type AreaGradient, areaGradient, outlineSources, type SourceRing } from '../area/index.ts';
import { outlineRings } from '../curves/index.ts';
import { snapRing } from '../kernel/index.ts';
import type { Ring } from '../spaces.ts';
import type { Outline } from '../yard.ts';
import { shapeOf } from './shape.ts';
import type { ZoneGround } from './zoneGround.ts';

/** A zone's ground does not change, nor what it follows. */
const gradients = new WeakMap<ZoneGround, AreaGradient>();

/** How a zone's treated area follows the points placed for it and for all that takes ground from it. */
export function zoneGradient(ground: ZoneGround): AreaGradient {
  const known = gradients.get(ground);
  if (known !== undefined) return known;
  const gradient = areaGradient(ground.treated.regions, zoneSources(ground));
  gradients.set(ground, gradient);
  return gradient;
}

/** All that the edges of a zone's ground lie on, the zone's own first. */
function zoneSources({ zone, takers }: ZoneGround): readonly SourceRing[] {
  const { owners, cutOuts, untreated } = takers;
  const shapes = [zone, ...owners.map((owner) => owner.zone), ...cutOuts, ...untreated];
  // An outline's strips lie along the outline itself.
  const outlines = new Set(shapes.map(({ outline }) => outline));
  return [...outlines].flatMap(sourcesOf);
}

const sources = new WeakMap<Outline, readonly SourceRing[]>();

/** What the edges of an outline lie on, made once. */
export function sourcesOf(outline: Outline): readonly SourceRing[] {
  const known = sources.get(outline);
  if (known !== undefined) return known;
  const made = outlineSources(outline, ringsOf(outline));
  sources.set(outline, made);
  return made;
}

/** The very rings that are overlaid, where they are, so that one left whole is known at sight. */
function ringsOf(outline: Outline): readonly Ring[] {
  const [only, ...others] = shapeOf(outline).regions;
  if (outline.holes.length === 0 && only !== undefined && others.length === 0) return [only.outer];
  return outlineRings(outline).map(snapRing);
}
