import { Defect } from '../result.ts';
import type { Region, YardPoint } from '../spaces.ts';
import {
  bufferGrid,
  clipLineGrid,
  fromGrid,
  GRID_M,
  type GridPaths,
  gridAreaM2,
  offsetGrid,
  overlayGrid,
  toGrid,
} from './clipper.ts';
import { orientRegion, regionsAreaM2, ringPerimeterM } from './measure.ts';
import { overlayBySecondKernel } from './secondKernel.ts';

/**
 * All ground in any of the regions; they may overlap, touch, repeat or cross themselves (even-odd).
 *
 * @returns regions that do not overlap, outer rings counter-clockwise, holes clockwise
 * Cost: n log n in vertices and crossings
 */
export function unionRegions(regions: readonly Region[]): Region[] {
  return fromGrid(overlayGrid('union', toGrid(regions), []));
}

/**
 * Ground of the first that is in none of the second.
 *
 * Accuracy: perimeter times the kernel grid; every result is held against area(A - B) + area(A and B) = area(A),
 * and one that fails is made again by a second kernel.
 * Throws a Defect when both kernels fail the identity.
 */
export function subtractRegions(from: readonly Region[], minus: readonly Region[]): Region[] {
  return split(from, minus).outside;
}

/** Ground that is in both. As `subtractRegions`. */
export function intersectRegions(a: readonly Region[], b: readonly Region[]): Region[] {
  return split(a, b).inside;
}

/**
 * Grown by a positive distance, shrunk by a negative one. Round corners are within 1 mm of the arc.
 * Shrinking may leave several regions, or none.
 */
export function offsetRegions(
  regions: readonly Region[],
  deltaM: number,
  join: 'round' | 'miter' = 'round',
): Region[] {
  const grid = overlayGrid('union', toGrid(regions), []);
  return fromGrid(overlayGrid('union', offsetGrid(grid, deltaM, join), []));
}

/** Ground within a distance of a walked line; a line that ends where it began has no ends. */
export function bufferLine(
  line: readonly YardPoint[],
  halfWidthM: number,
  ends: 'flat' | 'round' = 'flat',
): Region[] {
  return fromGrid(overlayGrid('union', bufferGrid(line, halfWidthM, ends), []));
}

/** The parts of a line that lie inside the regions, in no promised order or direction. */
export function clipLine(line: readonly YardPoint[], regions: readonly Region[]): YardPoint[][] {
  return clipLineGrid(line, overlayGrid('union', toGrid(regions), []));
}

function split(from: readonly Region[], by: readonly Region[]): { inside: Region[]; outside: Region[] } {
  const a = overlayGrid('union', toGrid(from), []);
  const b = overlayGrid('union', toGrid(by), []);
  const outside = overlayGrid('subtract', a, b);
  const inside = overlayGrid('intersect', a, b);
  const first = { inside: fromGrid(inside), outside: fromGrid(outside) };
  // The areas are those of the nested regions, so that a hole given to the wrong ring, or to none, shows too.
  if (closes(a, b, regionsAreaM2(first.inside), regionsAreaM2(first.outside))) return first;
  const [cleanA, cleanB] = [fromGrid(a), fromGrid(b)];
  const second = {
    inside: overlayBySecondKernel('intersect', cleanA, cleanB).map(orientRegion),
    outside: overlayBySecondKernel('subtract', cleanA, cleanB).map(orientRegion),
  };
  if (closes(a, b, regionsAreaM2(second.inside), regionsAreaM2(second.outside))) return second;
  throw new Defect('two overlay kernels lost ground');
}

/** Whether inside and outside make up the whole, to what rounding onto the grid can cost. */
function closes(a: GridPaths, b: GridPaths, insideM2: number, outsideM2: number): boolean {
  // Every crossing is rounded by up to a grid step, which moves the border between the two parts; along edges
  // of A both parts move together. Twice the perimeter times the step is generous for both.
  const edgeM = perimeterM(a) + perimeterM(b);
  return Math.abs(insideM2 + outsideM2 - gridAreaM2(a)) <= 2 * edgeM * GRID_M;
}

function perimeterM(paths: GridPaths): number {
  return fromGridRings(paths).reduce((sum, ring) => sum + ringPerimeterM(ring), 0);
}

function fromGridRings(paths: GridPaths) {
  return paths.map((path) => path.map(({ x, y }) => ({ xM: x * GRID_M, yM: y * GRID_M })));
}
