import { distanceM, regionContains } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import type { Cut } from './section.ts';

/** A cut as a hand takes hold of it: all its runs over the ground as one straight line. */
export interface WholeCut extends Cut {
  /** Places of its runs in the list of cuts. */
  readonly runs: readonly number[];
}

/** The cuts of a plan, and the ground of their zones. */
export interface PlannedCuts {
  readonly cuts: readonly Cut[];
  /** Treated ground of a zone. */
  readonly treatedOf: (zoneId: string) => readonly Region[];
}

/** Runs of one cut are in line to this: each was moved to tape marks by itself. */
const IN_LINE_M = 0.3;
const SAME_M = 1e-5;

/**
 * Cuts with the runs that beds part put together again: those of one held cut, and neighbours in one line with no
 * ground of the zone between them.
 */
export function wholeCuts({ cuts, treatedOf }: PlannedCuts): readonly WholeCut[] {
  const found: WholeCut[] = [];
  for (const [place, cut] of cuts.entries()) {
    const last = found.at(-1);
    if (last !== undefined && goesOn(last, cut, treatedOf)) {
      const { from, to } = farthest(last, cut);
      found[found.length - 1] = { ...last, from, to, runs: [...last.runs, place] };
    } else found.push({ ...cut, runs: [place] });
  }
  return found;
}

function goesOn(last: Cut, next: Cut, treatedOf: PlannedCuts['treatedOf']): boolean {
  if (last.zoneId !== next.zoneId || last.heldId !== next.heldId) return false;
  if (last.heldId !== null) return true;
  const ends = farthest(last, next);
  const isInLine = [last.from, last.to, next.from, next.to].every((at) => offM(ends, at) <= IN_LINE_M);
  if (!isInLine) return false;
  const gap = gapBetween(last, next);
  return gap !== undefined && !treatedOf(last.zoneId).some((region) => regionContains(region, gap));
}

/** The middle of what lies between two runs; undefined when they meet. */
function gapBetween(a: Cut, b: Cut): YardPoint | undefined {
  const pairs = [a.from, a.to].flatMap((p) => [b.from, b.to].map((q) => [p, q] as const));
  pairs.sort((one, other) => distanceM(...one) - distanceM(...other));
  const [p, q] = pairs[0] as (typeof pairs)[number];
  return distanceM(p, q) <= SAME_M ? undefined : { xM: (p.xM + q.xM) / 2, yM: (p.yM + q.yM) / 2 };
}

/** The two ends of two runs that are farthest apart, the way the first one runs. */
function farthest(a: Cut, b: Cut): Pick<Cut, 'from' | 'to'> {
  const on = { from: a.from, to: b.to };
  const back = { from: b.from, to: a.to };
  return distanceM(on.from, on.to) >= distanceM(back.from, back.to) ? on : back;
}

function offM({ from, to }: Pick<Cut, 'from' | 'to'>, at: YardPoint): number {
  const across = (at.yM - from.yM) * (to.xM - from.xM) - (at.xM - from.xM) * (to.yM - from.yM);
  return Math.abs(across) / distanceM(from, to);
}
