import { cornersIn, type Effort, growTree } from './cutTree.ts';
import { type CutPiece, layCuts } from './layCuts.ts';
import type { Lay } from './partRegion.ts';
import { loadCount, type Share } from './share.ts';

export type { CutPiece } from './layCuts.ts';

/** Corners times partings spent on a search for shorter cuts. */
const USUAL_WORK = 6000;
const MOST_PARTINGS = 100;
const MOST_FIRST = 8;
/** A search is given up at so many times what it should take. */
const LEEWAY = 2;
/** For ground of narrow ways that fork and meet again, where the shortest cuts lead nowhere. */
const LAST_WORK = 20_000;

/**
 * Cuts one connected piece into connected sections by parting it in two again and again, with little cut length.
 *
 * @param share the piece, and how many loads it takes
 * @param isCancelled asked before each step
 * @returns undefined when no straight cuts found give connected sections, or when cancelled
 * Cost: some hundred partings for ground of few corners and few sections, one a section for the largest
 */
export function cutPiece(share: Share, lay: Lay, isCancelled: () => boolean): CutPiece | undefined {
  const corners = cornersIn(share);
  const cuts = loadCount(share);
  const partings = Math.min(MOST_PARTINGS, USUAL_WORK / corners);
  const usual = (): Effort => ({
    partings,
    mostFirst: MOST_FIRST,
    left: { corners: LEEWAY * corners * Math.max(partings, cuts) },
  });
  const tree =
    growTree(share, lay, usual(), isCancelled) ??
    growTree(share, lay, { partings: 1, mostFirst: 1, left: { corners: LAST_WORK } }, isCancelled);
  return tree && layCuts(tree, share, lay, (other) => growTree(other, lay, usual(), isCancelled));
}
