import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';

/**
 * The shortest way from one point to another that does not see it, bending at some of the corners given.
 * Whether a corner is seen from where its way comes is asked only when its turn comes: most never have one.
 *
 * @param isFree whether a straight line stays on the ground
 * @param isFreeBetween the same between two corners by number, so that answers can be kept
 * @returns its points from the first to the last; undefined when no way leads there
 * Cost: corners times those that come to their turn, and few questions
 * Source: best-first search with the straight line as bound (A*), ways checked late
 */
export function shortestWay(
  from: YardPoint,
  to: YardPoint,
  bends: readonly YardPoint[],
  isFree: (a: YardPoint, b: YardPoint) => boolean,
  isFreeBetween: (i: number, j: number) => boolean,
): YardPoint[] | undefined {
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
  let found = START;
  for (;;) {
    const here = nextHop(hops, foundM);
    const hop = hops[here];
    if (hop === undefined) return found === START ? undefined : [from, ...bendsTo(hops, found), to];
    if (!hop.isSure) {
      hop.isSure = true;
      if (!sees(hop.via, here)) comeTo(hops, here, from, sees);
      continue;
    }
    hop.isDone = true;
    // A bend that sees the end settles the best way through it: the bound was the truth.
    if (hop.soFarM + hop.aheadM < foundM && isFree(hop.at, to)) {
      foundM = hop.soFarM + hop.aheadM;
      found = here;
    }
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

/** Comes to a bend the shortest way from the start or a bend that is done and sees it; Infinity when none does. */
function comeTo(
  hops: readonly Hop[],
  i: number,
  from: YardPoint,
  sees: (via: number, i: number) => boolean,
): void {
  const here = hops[i] as Hop;
  here.soFarM = Infinity;
  hops.forEach((hop, via) => {
    const throughM = hop.soFarM + distanceM(hop.at, here.at);
    if (!hop.isDone || throughM >= here.soFarM || !sees(via, i)) return;
    here.soFarM = throughM;
    here.via = via;
  });
  const startM = distanceM(from, here.at);
  if (startM >= here.soFarM || !sees(START, i)) return;
  here.soFarM = startM;
  here.via = START;
}

/** The bends of the way to one of them, that one included. */
function bendsTo(hops: readonly Hop[], last: number): YardPoint[] {
  const bends: YardPoint[] = [];
  for (let hop = hops[last]; hop !== undefined; hop = hops[hop.via]) bends.unshift(hop.at);
  return bends;
}
