import { regionAreaM2 } from '../kernel/index.ts';
import { cornersIn, type Lay, type Parting, partRegion, usualCutM } from './partRegion.ts';
import { loadCount, type Share } from './share.ts';
import { isSpent, type Work } from './work.ts';

/** A share cut all the way: its first cut, and both sides of it cut in turn. */
export interface CutTree {
  readonly share: Share;
  /** null = one section, not cut. */
  readonly first: Parting | null;
  readonly sides: readonly [CutTree, CutTree] | null;
  /** Of all its cuts. */
  readonly costM: number;
}

/** How much is tried. All counts of work, so that the same ground always gets the same cuts. */
export interface Effort {
  /** Partings of shares looked for in all, if every one of them does. */
  readonly partings: number;
  /** First cuts of one share tried at most. */
  readonly mostFirst: number;
  /** Any connected sections will do. */
  readonly hasty: boolean;
  /** Spent by all of the search together; with none left it ends with the best found. */
  readonly work: Work;
}

/** Directions besides the lanes' and the edges' own: every 15 degrees. */
const FAN = 12;
/** First cuts kept for when those tried lead nowhere. */
const SPARE = 8;
/** Runs of chords take time by the square of the corners: above this many only where whole lines will not do. */
const MOST_CORNERS_FOR_RUNS = 200;
/** No ground takes less than this part of the cutting that is usual, so first cuts too long to win are passed over. */
const LEAST_PART = 0.5;

/**
 * The least cutting that parts a share into its loads, as far as it is looked for: the most promising first cuts are
 * each followed all the way, the effort shared out between them by the cuts they still need.
 *
 * @returns undefined when no straight cuts tried give connected sections, when given up, or when cancelled
 */
export function growTree(
  share: Share,
  lay: Lay,
  effort: Effort,
  isCancelled: () => boolean,
): CutTree | undefined {
  const cuts = loadCount(share) - 1;
  if (cuts <= 0) return { share, first: null, sides: null, costM: 0 };
  if (isSpent(effort.work) || isCancelled()) return undefined;
  const width = widthFor(cuts, effort);
  const each = (effort.partings - 1) / width / Math.max(1, cuts - 1);
  const grown = (side: Share): CutTree | undefined =>
    growTree(side, lay, { ...effort, partings: each * (loadCount(side) - 1) }, isCancelled);
  const runs = cornersIn(share.region) <= MOST_CORNERS_FOR_RUNS;
  let best: CutTree | undefined;
  let tried = 0;
  const search = { fan: FAN, partings: Math.max(width, SPARE), runs, hasty: effort.hasty };
  for (const first of partRegion(share, lay, search, effort.work)) {
    if (best !== undefined && tried >= width) break;
    if (best !== undefined && leastM(first) >= best.costM) continue;
    tried++;
    const below = grown(first.shares[0]);
    if (below === undefined || (best !== undefined && first.costM + below.costM >= best.costM)) continue;
    const above = grown(first.shares[1]);
    const costM = above && first.costM + below.costM + above.costM;
    if (costM === undefined || costM >= (best?.costM ?? Infinity)) continue;
    best = { share, first, sides: [below, above as CutTree], costM };
  }
  return best;
}

/** How many first cuts can each be followed to the end. With two sections the first is the last. */
function widthFor(cuts: number, { partings, mostFirst }: Effort): number {
  if (cuts === 1) return 1;
  return Math.max(1, Math.min(mostFirst, Math.floor((partings - 1) / (1.5 * (cuts - 1)))));
}

function leastM({ costM, shares }: Parting): number {
  return shares.reduce((sum, side) => sum + LEAST_PART * usualCutM(side, regionAreaM2(side.region)), costM);
}
