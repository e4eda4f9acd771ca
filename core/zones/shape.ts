import { tracedRegion } from '../curves/index.ts';
import {
  boxesMeet,
  orientRegion,
  type RingBounds,
  ringBounds,
  snapRing,
  subtractRegions,
} from '../kernel/index.ts';
import type { Region, Ring } from '../spaces.ts';
import type { Outline } from '../yard.ts';
import type { OutlineStrips } from './resolved.ts';

/** Ground made ready for overlays: on the kernel grid, its rings running the right way, its box known. */
export interface Shape {
  readonly outline: Outline;
  /** Not the outline's own ground but that of the strips kept off along it. */
  readonly strips?: OutlineStrips;
  /** One region, or what its holes leave when they reach its edge. */
  readonly regions: readonly Region[];
  readonly bounds: RingBounds;
}

/** Outlines do not change; while one is dragged the others are as ready as they were. */
const ready = new WeakMap<Outline, Shape>();

/**
 * @param outline checked by `checkOutline`
 */
export function shapeOf(outline: Outline): Shape {
  const known = ready.get(outline);
  if (known !== undefined) return known;
  const shape = makeReady(outline);
  ready.set(outline, shape);
  return shape;
}

function makeReady(outline: Outline): Shape {
  // On the grid from the start, so that a zone's area is the same number whether or not an overlay was needed.
  const { outer, holes } = tracedRegion(outline);
  const whole = ringRegion(outer);
  const regions = holes.length === 0 ? [whole] : subtractRegions([whole], holes.map(ringRegion));
  return { outline, regions, bounds: ringBounds(whole.outer) };
}

function ringRegion(ring: Ring): Region {
  return orientRegion({ outer: snapRing(ring), holes: [] });
}

/** The shapes whose boxes meet a zone's box. */
export function near(zone: Shape, shapes: readonly Shape[]): readonly Shape[] {
  return shapes.filter((shape) => shape !== zone && boxesMeet(zone.bounds, shape.bounds));
}
