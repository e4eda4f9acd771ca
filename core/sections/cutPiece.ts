import { sum } from '../units/index.ts';
import { type Lay, type Lines, type Parting, partRegion, type Search } from './partRegion.ts';
import { loadCount, type Share } from './share.ts';

/** A piece of ground cut to loads, and the lines it was cut along. */
export interface CutPiece {
  /** Each of one load, or of one rest. */
  readonly parts: readonly Share[];
  readonly cuts: Lines;
}

interface State {
  readonly open: readonly Share[];
  readonly done: readonly Share[];
  readonly cuts: CutPiece['cuts'];
  readonly costM: number;
}

/**
 * Cuts one connected piece into connected sections by parting it in two again and again, with the least cut length.
 *
 * @param share the piece, and how many loads it takes
 * @param isCancelled asked before each step
 * @returns undefined when no straight cuts give connected sections, or when cancelled
 * Cost: a beam of fixed width, so (loads - 1) x width partings at most; ground that needs the wide search takes some
 *   ten times as long
 */
export function cutPiece(share: Share, lay: Lay, isCancelled: () => boolean): CutPiece | undefined {
  return searched(share, lay, USUAL, isCancelled) ?? searched(share, lay, WIDE, isCancelled);
}

/** Enough for nearly all ground. */
const USUAL: Search = { fan: 12, partings: 8, leastBeam: 1 };
/** For ground of narrow ways that fork and meet again, where the shortest cuts lead nowhere: ten times as long. */
const WIDE: Search = { fan: 24, partings: 24, leastBeam: 24 };

function searched(share: Share, lay: Lay, search: Search, isCancelled: () => boolean): CutPiece | undefined {
  const known = new Map<Share, Parting[]>();
  const width = Math.max(search.leastBeam, beamWidth(loadCount(share)));
  let states: State[] = [{ open: [share], done: [], cuts: [], costM: 0 }];
  for (;;) {
    const first = states[0];
    if (first === undefined || isCancelled()) return undefined;
    states = states.map(settle);
    const finished = states.find((state) => state.open.length === 0);
    if (finished !== undefined) return { parts: finished.done, cuts: finished.cuts };
    states = states
      .flatMap((state) => expand(state, known, lay, search))
      .sort((a, b) => a.costM - b.costM)
      .slice(0, width);
  }
}

/** Few loads can afford a wide search; with many, the cuts average out anyway. */
function beamWidth(loads: number): number {
  if (loads <= 4) return 6;
  if (loads <= 12) return 4;
  return loads <= 40 ? 2 : 1;
}

/** Moves the shares that need no more cutting to `done`. */
function settle(state: State): State {
  const single = state.open.filter(isSection);
  if (single.length === 0) return state;
  return {
    ...state,
    open: state.open.filter((share) => !isSection(share)),
    done: [...state.done, ...single],
  };
}

function isSection(share: Share): boolean {
  return loadCount(share) <= 1;
}

function restM2({ rests }: Share): number {
  return sum(rests.map((rest) => rest.areaM2));
}

/** Every state has been cut the same number of times, so their costs compare. */
function expand(state: State, known: Map<Share, Parting[]>, lay: Lay, search: Search): State[] {
  const [next, ...open] = state.open.toSorted((a, b) => b.loads - a.loads || restM2(b) - restM2(a));
  if (next === undefined) return [];
  let partings = known.get(next);
  if (partings === undefined) {
    partings = partRegion(next, lay, search);
    known.set(next, partings);
  }
  return partings.map((parting) => ({
    open: [...open, ...parting.shares],
    done: state.done,
    cuts: [...state.cuts, ...parting.cuts],
    costM: state.costM + parting.costM,
  }));
}
