import type { Region } from '../spaces.ts';
import { changedAbout, deepGrid, fromGrid, gridAreaM2, toGrid } from './clipper.ts';
import { ringBounds } from './measure.ts';
import { intersectRegions, unionRegions } from './overlay.ts';

/** Two answers that differ by more than this part of the ground counted are not both right. */
const AGREE_PART = 1e-6;

/**
 * Ground under two or more of the regions.
 *
 * The overlay is known to err now and then where many edges meet. So it is asked a second time with x and y changed
 * about, which sweeps the ground another way; when the two differ, the overlaps are made pair by pair instead.
 *
 * @param regions each without overlap in itself
 * Accuracy: perimeter times the kernel grid; checked against counting in tests/oracle/coverage.test.ts
 * Cost: n log n in vertices and crossings; n squared boxes and an overlay a pair when the answers differ
 * Source: the winding number of oriented rings counts how often a spot is covered. Own work.
 */
export function coveredTwice(regions: readonly Region[]): Region[] {
  const paths = regions.flatMap((region) => toGrid([region]));
  const deep = deepGrid(paths);
  const deepM2 = gridAreaM2(deep);
  const acrossM2 = gridAreaM2(deepGrid(changedAbout(paths)));
  if (Math.abs(deepM2 - acrossM2) <= AGREE_PART * gridAreaM2(paths)) return fromGrid(deep);
  return pairByPair(regions);
}

function pairByPair(regions: readonly Region[]): Region[] {
  const boxed = regions
    .map((region) => ({ region, box: ringBounds(region.outer) }))
    .sort((a, b) => a.box.minXM - b.box.minXM);
  const overlaps = boxed.flatMap(({ region, box }, i) => {
    const found: Region[] = [];
    for (const other of boxed.slice(i + 1)) {
      if (other.box.minXM > box.maxXM) break;
      if (other.box.minYM > box.maxYM || other.box.maxYM < box.minYM) continue;
      found.push(...intersectRegions([region], [other.region]));
    }
    return found;
  });
  return unionRegions(overlaps);
}
