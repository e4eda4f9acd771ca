import { type Effort, growTree } from './cutTree.ts';
import { type CutPiece, layCuts } from './layCuts.ts';
import { cornersIn, type Lay } from './partRegion.ts';
import { loadCount, type Share } from './share.ts';

export type { CutPiece } from './layCuts.ts';

/** Corners times partings spent on a search for shorter cuts. */
const USUAL_PARTINGS = 6000;
/** Where there are many corners but many cuts too: partings for each cut, and corners times partings. */
const PARTINGS_A_CUT = 6;
const MOST_PARTINGS_WORK = 60_000;
const MOST_PARTINGS = 100;
const MOST_FIRST = 8;
/** A search ends here, whatever it has found: some tenths of a second. */
const USUAL_WORK = 12_000_000;
/** For ground of narrow ways that fork and meet again, where the shortest cuts lead nowhere. */
const LAST_WORK = 24_000_000;

/**
 * Cuts one connected piece into connected sections by parting it in two again and again, with little cut length.
 *
 * @param share the piece, and how many loads it takes
 * @param isCancelled asked before each step
 * @returns undefined when no straight cuts found give connected sections, or when cancelled
 * Cost: some hundred partings for ground of few corners and few sections, one a section for the largest; all of it
 *   is counted and ends at the work above, so that no ground takes longer than a second or two
 */
export function cutPiece(share: Share, lay: Lay, isCancelled: () => boolean): CutPiece | undefined {
  const corners = cornersIn(share.region);
  const forMany = Math.min(PARTINGS_A_CUT * (loadCount(share) - 1), MOST_PARTINGS_WORK / corners);
  const partings = Math.min(MOST_PARTINGS, Math.max(USUAL_PARTINGS / corners, forMany));
  const usual = (): Effort => ({
    partings,
    mostFirst: MOST_FIRST,
    hasty: false,
    work: { left: USUAL_WORK },
  });
  const last = { partings: 1, mostFirst: 1, hasty: true, work: { left: LAST_WORK } };
  const tree = growTree(share, lay, usual(), isCancelled) ?? growTree(share, lay, last, isCancelled);
  const again = usual();
  return tree && layCuts(tree, share, lay, (other) => growTree(other, lay, again, isCancelled));
}
