import { RegionIndex, regionContains, subtractRegions } from '../kernel/index.ts';
import { Defect } from '../result.ts';
import type { Region, Ring, YardPoint } from '../spaces.ts';
import { boxesMeet, type Shape } from './shape.ts';

export interface Left {
  /** The very same list when nothing was taken away. */
  readonly regions: readonly Region[];
  /** The shapes that lay whole inside, clear of every edge and of one another. */
  readonly whole: readonly Shape[];
}

/**
 * Regions less shapes. A shape that lies whole inside and apart from every other is simply a hole and needs no
 * overlay; while a corner is dragged, that is nearly every bed there is.
 *
 * @param regions apart from one another, on the kernel grid
 * Accuracy: as `subtractRegions`; a shape handled as a hole costs nothing
 * Cost: log n an edge for the holes; n log n for the rest
 */
export function takeAway(regions: readonly Region[], shapes: readonly Shape[]): Left {
  if (shapes.length === 0 || regions.length === 0) return { regions, whole: [] };
  const indexes = regions.map((region) => new RegionIndex(region));
  const [whole, rest]: [Shape[], Shape[]] = [[], []];
  for (const shape of shapes) {
    const outer = simpleRing(shape);
    const clear =
      outer !== undefined &&
      shapes.every((other) => other === shape || !boxesMeet(other.bounds, shape.bounds)) &&
      indexes.some((index) => index.holdsClear(outer));
    (clear ? whole : rest).push(shape);
  }
  const left =
    rest.length === 0
      ? regions
      : subtractRegions(
          regions,
          rest.flatMap((shape) => shape.regions),
        );
  return { regions: whole.length === 0 ? left : withHoles(left, whole), whole };
}

function simpleRing({ regions }: Shape): Ring | undefined {
  const [only, ...others] = regions;
  return others.length === 0 && only?.holes.length === 0 ? only.outer : undefined;
}

function withHoles(regions: readonly Region[], shapes: readonly Shape[]): Region[] {
  const holes = regions.map((region) => [...region.holes]);
  for (const shape of shapes) {
    const ring = simpleRing(shape) ?? [];
    // Clear of all that was overlaid, so one corner tells which piece the shape lies in.
    const owner = regions.findIndex((piece) => regionContains(piece, ring[0] as YardPoint));
    if (owner < 0) throw new Defect(`no ground round ${shape.outline.id}`);
    holes[owner]?.push([...ring].reverse());
  }
  return regions.map(({ outer }, i) => ({ outer, holes: holes[i] ?? [] }));
}
