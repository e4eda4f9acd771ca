import type { Region } from '../spaces.ts';
import { deepGrid, fromGrid, toGrid } from './clipper.ts';

/**
 * Ground under two or more of the regions.
 *
 * Accuracy: perimeter times the kernel grid; checked against counting in tests/oracle/coverage.test.ts
 * Cost: n log n in vertices and crossings
 * Source: the winding number of oriented rings counts how often a spot is covered. Own work.
 */
export function coveredTwice(regions: readonly Region[]): Region[] {
  return fromGrid(deepGrid(regions.flatMap((region) => toGrid([region]))));
}
