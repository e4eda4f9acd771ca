import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';

/**
 * Length of the shortest way from one point to another that does not see it, bending at some of the corners given.
 * Whether a corner is seen from where its way comes is asked only when its turn comes: most never have one.
 *
 * @param isFree whether a straight line stays on the ground
 * @param isFreeBetween the same between two corners by number, so that answers can be kept
 * @returns undefined when no way leads there
 * Cost: corners times those that come to their turn, and few questions
 * Source: best-first search with the straight line as bound (A*), ways checked late
 */
export function shortestWayM(
  from: YardPoint,
  to: YardPoint,
  bends: readonly YardPoint[],
  isFree: (a: YardPoint, b: YardPoint) => boolean,
  isFreeBetween: (i: number, j: number) => boolean,
): number | undefined {
  const hops = bends.map((at): Hop => {
    return {
      at,
      aheadM: distanceM(at, to),
      soFarM: distanceM(from, at),
      via: START,
      isSure: false,
      isDone: false,
    };
  });
  const sees = (via: number, i: number): boolean =>
    via === START ? isFree(from, bends[i] as YardPoint) : isFreeBetween(via, i);
  let foundM = Infinity;
  for (;;) {
    const here = nextHop(hops, foundM);
    const hop = hops[here];
    if (hop === undefined) return foundM === Infinity ? undefined : foundM;
    if (!hop.isSure) {
      hop.isSure = true;
      if (!sees(hop.via, here)) hop.soFarM = shortestSure(hops, here, from, sees);
      continue;
    }
    hop.isDone = true;
    // A bend that sees the end settles the best way through it: the bound was the truth.
    if (isFree(hop.at, to)) foundM = Math.min(foundM, hop.soFarM + hop.aheadM);
    for (const other of hops) {
      const throughM = hop.soFarM + distanceM(hop.at, other.at);
      if (other.isDone || throughM >= other.soFarM) continue;
      other.soFarM = throughM;
      other.via = here;
      other.isSure = false;
    }
  }
}

/** The place a way begins at, among the numbers of bends. */
const START = -1;

interface Hop {
  readonly at: YardPoint;
  readonly aheadM: number;
  /** Length of the way here by `via`; true only once `isSure`. */
  soFarM: number;
  via: number;
  isSure: boolean;
  isDone: boolean;
}

/** The open hop with the least length so far and ahead, if that is below what is found; -1 when none is. */
function nextHop(hops: readonly Hop[], foundM: number): number {
  let next = -1;
  let nextM = foundM;
  hops.forEach(({ soFarM, aheadM, isDone }, i) => {
    if (isDone || soFarM + aheadM >= nextM) return;
    next = i;
    nextM = soFarM + aheadM;
  });
  return next;
}

/** Shortest way to a bend from the start or a bend that is done and sees it; Infinity when none does. */
function shortestSure(
  hops: readonly Hop[],
  i: number,
  from: YardPoint,
  sees: (via: number, i: number) => boolean,
): number {
  const { at } = hops[i] as Hop;
  let bestM = Infinity;
  const startM = distanceM(from, at);
  hops.forEach((hop, via) => {
    const throughM = hop.soFarM + distanceM(hop.at, at);
    if (hop.isDone && throughM < bestM && sees(via, i)) bestM = throughM;
  });
  return startM < bestM && sees(START, i) ? startM : bestM;
}
