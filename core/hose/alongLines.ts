import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { HoseWays } from './hoseWays.ts';

/** A place of some lines, and how much hose it takes there. */
export interface HosePlace {
  readonly at: YardPoint;
  readonly lengthM: number;
}

/** The most and the least hose along lines are found this near. */
const WITHIN_M = 1e-3;
/** Stretches looked at, ample for a plan of hectares: beyond it the answer is as good as it has become. */
const MOST_LOOKS = 20_000;

/**
 * The place of some lines that takes the most hose.
 *
 * @param lines each at least one point
 * @returns undefined when there is no line; a place no way leads to counts as the farthest, with length Infinity
 * Accuracy: WITHIN_M, on ground wider than twice what the hose keeps off
 * Source: between two places w apart the hose grows by w at most, so that no place between them takes more than half
 * of both lengths and w: stretches are halved until none can hold more (Piyavskii 1972, Shubert 1972)
 */
export function farthestAlong(
  ways: HoseWays,
  lines: readonly (readonly YardPoint[])[],
): HosePlace | undefined {
  return extremeAlong(lines, (at) => -ways.lengthM(at), negated);
}

/** The place of some lines that takes the least hose. As `farthestAlong`; Infinity where no way leads to any. */
export function nearestAlong(
  ways: HoseWays,
  lines: readonly (readonly YardPoint[])[],
): HosePlace | undefined {
  return extremeAlong(lines, ways.lengthM, (place) => place);
}

function negated({ at, lengthM }: HosePlace): HosePlace {
  return { at, lengthM: -lengthM };
}

/** The place with the least value, where values of places w apart differ by w at most or are infinite. */
function extremeAlong(
  lines: readonly (readonly YardPoint[])[],
  valueM: (at: YardPoint) => number,
  told: (place: HosePlace) => HosePlace,
): HosePlace | undefined {
  const look = (at: YardPoint): HosePlace => ({ at, lengthM: valueM(at) });
  const looked = lines.map((line) => line.map(look));
  let best = looked.flat().reduce<HosePlace | undefined>(lesser, undefined);
  if (best === undefined) return undefined;
  const open = looked.flatMap((line) => line.slice(1).map((b, i) => stretch(line[i] as HosePlace, b)));
  // The most promising last, where it is taken from.
  open.sort((a, b) => b.leastM - a.leastM);
  for (let looks = 0; looks < MOST_LOOKS; looks++) {
    const next = open.pop();
    if (next === undefined) break;
    // Written so that two places that no way leads to are done with.
    if (!(next.leastM < best.lengthM - WITHIN_M)) continue;
    const { a, b } = next;
    const middle = look({ xM: (a.at.xM + b.at.xM) / 2, yM: (a.at.yM + b.at.yM) / 2 });
    best = lesser(best, middle);
    open.push(stretch(a, middle), stretch(middle, b));
  }
  return told(best);
}

interface Stretch {
  readonly a: HosePlace;
  readonly b: HosePlace;
  /** No place of it has less. */
  readonly leastM: number;
}

function stretch(a: HosePlace, b: HosePlace): Stretch {
  const wideM = distanceM(a.at, b.at);
  const leastM = Number.isFinite(a.lengthM + b.lengthM)
    ? (a.lengthM + b.lengthM - wideM) / 2
    : Math.min(a.lengthM, b.lengthM) - wideM;
  return { a, b, leastM };
}

function lesser(best: HosePlace | undefined, place: HosePlace): HosePlace {
  return best === undefined || place.lengthM < best.lengthM ? place : best;
}
