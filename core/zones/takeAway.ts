import { placeClear, splitRegions, withClearHoles } from '../kernel/index.ts';
import type { Region, Ring } from '../spaces.ts';
import type { Shape } from './shape.ts';

export interface Left {
  /** The very same list when nothing was taken away. */
  readonly regions: readonly Region[];
  /** What was taken away by the shapes that are not whole. */
  readonly cut: readonly Region[];
  /** The shapes that lay whole inside, clear of every edge and of one another. */
  readonly whole: readonly Shape[];
}

/**
 * Regions less shapes. A shape that lies whole inside and apart from every other is simply a hole and needs no
 * overlay; while a corner is dragged, that is nearly every bed there is.
 *
 * @param regions apart from one another, on the kernel grid
 * Accuracy: as `splitRegions`; a shape handled as a hole costs nothing
 * Cost: log n an edge for the holes; n log n for the rest
 */
export function takeAway(regions: readonly Region[], shapes: readonly Shape[]): Left {
  if (shapes.length === 0 || regions.length === 0) return { regions, cut: [], whole: [] };
  const rings = shapes.map(simpleRing);
  const placed = placeClear(
    regions,
    shapes.map(({ bounds }, i) => ({ bounds, ring: rings[i] })),
  );
  const isWhole = (_: Shape, i: number): boolean => (placed[i] ?? -1) >= 0;
  const whole = shapes.filter(isWhole);
  const { left, cut } = cutAway(
    regions,
    shapes.filter((shape, i) => !isWhole(shape, i)),
  );
  const holes = rings.flatMap((ring, i) => {
    const within = placed[i] ?? -1;
    return ring === undefined || within < 0 ? [] : [[ring, within] as const];
  });
  return {
    regions: holes.length === 0 ? left : withClearHoles(left, holes, left === regions),
    cut,
    whole,
  };
}

function cutAway(
  regions: readonly Region[],
  shapes: readonly Shape[],
): { readonly left: readonly Region[]; readonly cut: readonly Region[] } {
  if (shapes.length === 0) return { left: regions, cut: [] };
  const { inside, outside } = splitRegions(
    regions,
    shapes.flatMap((shape) => shape.regions),
  );
  // Two lawns along one border: their boxes meet and their ground does not.
  return inside.length === 0 ? { left: regions, cut: [] } : { left: outside, cut: inside };
}

function simpleRing({ regions }: Shape): Ring | undefined {
  const [only, ...others] = regions;
  return others.length === 0 && only?.holes.length === 0 ? only.outer : undefined;
}
