import { edgePath } from '../curves/index.ts';
import {
  bufferLine,
  intersectRegions,
  offsetRegions,
  type RingBounds,
  ringBounds,
  subtractRegions,
  unionRegions,
} from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import type { Region, YardPoint } from '../spaces.ts';
import type { Outline, Traced } from '../yard.ts';
import type { KeepOffStrip } from './resolved.ts';
import { type Shape, shapeOf } from './shape.ts';

/** Wider than this a strip is a slip of the keys; the widest setback a label or a law is known to ask is 30 m. */
export const WIDEST_STRIP_M = 100;

/** Outlines do not change; while one is dragged the strips along the others are as they were. */
const known = new WeakMap<Outline, readonly Shape[]>();

/** A problem for each width that cannot be one. */
export function stripProblems(outline: Outline): readonly Problem[] {
  const { id, name } = outline;
  return widths(outline).flatMap(({ widthM, at }): readonly Problem[] => {
    // Written so that NaN fails too.
    if (widthM >= 0 && widthM <= WIDEST_STRIP_M) return [];
    const where = at === undefined ? { outlineId: id, name } : { outlineId: id, name, at };
    return [{ kind: 'shape/keep-off-width', where, facts: { widthM, mostM: WIDEST_STRIP_M } }];
  });
}

/**
 * The strips kept off along an outline: all ground within the width of its edge, round at the corners and past the
 * ends of a single edge. A zone's lie inside it, those of anything else outside.
 *
 * @param outline checked by `checkOutline`
 * @returns one shape of all its strips together, or none
 * Accuracy: round corners are chords up to 1 mm inside the arc, so a strip may be short of its width by that there
 */
export function stripShapes(outline: Outline): readonly Shape[] {
  const found = known.get(outline);
  if (found !== undefined) return found;
  const shapes = makeShapes(outline);
  known.set(outline, shapes);
  return shapes;
}

function makeShapes(outline: Outline): readonly Shape[] {
  const strips = widths(outline)
    .filter(({ widthM }) => widthM > 0)
    .map((width): KeepOffStrip => {
      const { ring, edge, widthM } = width;
      const regions = edge === null ? allRound(outline, widthM) : alongEdge(outline, width.line, widthM);
      return { outlineId: outline.id, ring, edge, widthM, regions };
    })
    .filter(({ regions }) => regions.length > 0);
  const [first, ...more] = strips;
  if (first === undefined) return [];
  const regions = more.length === 0 ? first.regions : unionRegions(strips.flatMap((strip) => strip.regions));
  const bounds = boundsOf(regions);
  return [{ outline, strips: { outlineId: outline.id, strips, regions }, regions, bounds }];
}

interface Width {
  readonly ring: number;
  readonly edge: number | null;
  readonly widthM: number;
  readonly line: readonly YardPoint[];
  readonly at: YardPoint | undefined;
}

/** Most outlines have none, and there may be thousands of them. */
const NONE: readonly Width[] = [];

function widths(outline: Outline): readonly Width[] {
  if (outline.keepOffM === null && ![outline.outer, ...outline.holes].some(hasEdgeWidth)) return NONE;
  const all = outline.keepOffM;
  const round: readonly Width[] =
    all === null ? [] : [{ ring: 0, edge: null, widthM: all, line: [], at: undefined }];
  const edges = [outline.outer, ...outline.holes].flatMap((traced, ring) =>
    edgeWidths(traced).map((width) => ({ ...width, ring })),
  );
  return [...round, ...edges];
}

function hasEdgeWidth(traced: Traced): boolean {
  return traced.kind === 'corners' && traced.corners.some(({ keepOffM }) => keepOffM !== undefined);
}

function edgeWidths(traced: Traced): readonly Omit<Width, 'ring'>[] {
  if (traced.kind !== 'corners') return [];
  return traced.corners.flatMap((corner, edge) => {
    const widthM = corner.keepOffM;
    return widthM === undefined ? [] : [{ edge, widthM, line: edgePath(traced, edge), at: corner }];
  });
}

function allRound(outline: Outline, widthM: number): readonly Region[] {
  const { regions } = shapeOf(outline);
  return outline.kind === 'zone'
    ? subtractRegions(regions, offsetRegions(regions, -widthM))
    : subtractRegions(offsetRegions(regions, widthM), regions);
}

function alongEdge(outline: Outline, line: readonly YardPoint[], widthM: number): readonly Region[] {
  const { regions } = shapeOf(outline);
  // Round ends: strips along neighbouring edges meet without a gap at the corner, whatever its angle.
  const strip = bufferLine(line, widthM, 'round');
  return outline.kind === 'zone' ? intersectRegions(strip, regions) : subtractRegions(strip, regions);
}

function boundsOf(regions: readonly Region[]): RingBounds {
  return ringBounds(regions.flatMap(({ outer }) => outer));
}
