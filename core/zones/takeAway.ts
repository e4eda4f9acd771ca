import { BoxIndex, RegionIndex, regionContains, reversedRing, splitRegions } from '../kernel/index.ts';
import { Defect } from '../result.ts';
import type { Region, Ring, YardPoint } from '../spaces.ts';
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
  const indexes = regions.map(indexOf);
  const boxes = new BoxIndex(shapes, ({ bounds }) => bounds);
  // Which of the regions each whole shape lies in.
  const whole = new Map<Shape, number>();
  const rest: Shape[] = [];
  for (const shape of shapes) {
    const outer = simpleRing(shape);
    const isApart = outer !== undefined && boxes.meeting(shape.bounds).length === 1;
    const within = isApart ? indexes.findIndex((index) => index.holdsClear(outer)) : -1;
    if (within < 0) rest.push(shape);
    else whole.set(shape, within);
  }
  const { left, cut } = cutAway(regions, rest);
  return {
    regions: whole.size === 0 ? left : withHoles(left, whole, left === regions),
    cut,
    whole: [...whole.keys()],
  };
}

/** Regions do not change; a zone that is not dragged answers from the index it had. */
const indexes = new WeakMap<Region, RegionIndex>();

function indexOf(region: Region): RegionIndex {
  const known = indexes.get(region);
  if (known !== undefined) return known;
  const index = new RegionIndex(region);
  indexes.set(region, index);
  return index;
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

/** @param asBefore the pieces are the regions the shapes were found in, not what an overlay made of them */
function withHoles(
  regions: readonly Region[],
  shapes: ReadonlyMap<Shape, number>,
  asBefore: boolean,
): Region[] {
  const holes = regions.map((region) => [...region.holes]);
  for (const [shape, within] of shapes) {
    const ring = simpleRing(shape) ?? [];
    // Clear of all that was overlaid, so one corner tells which piece the shape lies in.
    const owner = asBefore
      ? within
      : regions.findIndex((piece) => regionContains(piece, ring[0] as YardPoint));
    if (owner < 0) throw new Defect(`no ground round ${shape.outline.id}`);
    holes[owner]?.push(reversedRing(ring));
  }
  return regions.map(({ outer }, i) => ({ outer, holes: holes[i] ?? [] }));
}
