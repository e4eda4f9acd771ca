import { Defect } from '../result.ts';
import type { Region } from '../spaces.ts';
import {
  fromGrid,
  GRID_M,
  type GridPaths,
  gridAreaM2,
  gridPerimeterM,
  overlayGrid,
  toGrid,
} from './clipper.ts';
import { overlayBySecondKernel } from './secondKernel.ts';

/**
 * Regions as one clean set on the grid. They may overlap, touch, repeat or cross themselves.
 *
 * The library's union is known to fill a pocket or lose a strip now and then, so it is held against what it was
 * made from: union - regions and regions - union must both be nothing. Where one is not, a second kernel makes it
 * and has to pass the same test, or agree with the first. Two other checks were tried and dropped, for each can
 * share the union's fault: what the regions leave of a frame, and the same union with x and y changed about
 * (tests/fixtures/kernel/union-*.json).
 * Throws a Defect when no answer stands.
 */
export function joinRegions(regions: readonly Region[]): GridPaths {
  const each = regions.map((region) => toGrid([region]));
  const paths = each.flat();
  // One region alone was made clean on its way to the grid.
  if (regions.length <= 1 || paths.length === 0) return paths;
  const joined = overlayGrid('union', paths, []);
  const slackM2 = gridPerimeterM(paths) * GRID_M;
  const isSmall = (areaM2: number): boolean => Math.abs(areaM2) <= slackM2;
  const stands = (union: GridPaths): boolean =>
    isSmall(gridAreaM2(overlayGrid('subtract', union, paths))) &&
    isSmall(gridAreaM2(overlayGrid('subtract', paths, union)));
  // Regions apart from one another weigh what they weigh together; nothing was joined and nothing can be lost.
  if (isSmall(gridAreaM2(joined) - gridAreaM2(paths)) || stands(joined)) return joined;
  const second = joinBySecondKernel(each);
  if (stands(second)) return second;
  if (isSmall(gridAreaM2(second) - gridAreaM2(joined))) return joined;
  throw new Defect('two overlay kernels disagree about a union');
}

function joinBySecondKernel(each: readonly GridPaths[]): GridPaths {
  try {
    return toGrid(overlayBySecondKernel('union', each.flatMap(fromGrid), []));
  } catch (cause) {
    throw new Defect(`two overlay kernels disagree about a union: ${String(cause)}`);
  }
}
