import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import { type Bend, bendTree, isInWedge } from './bendTree.ts';
import { type ClearGround, MOST_IN_WALL_M, type Stand, standAt } from './clearGround.ts';
import type { HoseSpigot } from './hoseGround.ts';

/** How a hose lies from its spigot to one place. */
export interface HoseWay {
  readonly lengthM: number;
  /** From the spigot, or the wall it is drawn in, over every bend to the place; at least one point. */
  readonly line: readonly YardPoint[];
  /** The corners it is laid round, in that order. */
  readonly bends: readonly YardPoint[];
}

/** Shortest ways of a hose from one spigot, prepared once for many places. */
export interface HoseWays {
  readonly spigot: HoseSpigot;
  /** null when the spigot lies inside a barrier, or no straight way leads out of what is kept off round it. */
  readonly stand: Stand | null;
  /** The start of the clear ground first, then the bends, nearest first; empty without a stand. */
  readonly bends: readonly Bend[];
  /** Infinity where no way leads. */
  readonly lengthM: (to: YardPoint) => number;
  /** undefined where no way leads. */
  readonly wayTo: (to: YardPoint) => HoseWay | undefined;
}

/**
 * Ways of a hose without slack, the shortest there are: over anything but the barriers, off the lot too.
 *
 * A place nearer to a barrier than the hose keeps off is reached straight from the nearest place that is not, and
 * that way counts; so for the spigot. A spigot drawn in its wall stands at the nearest place on the wall.
 * Accuracy: 1e-8 m, against another method in tests/oracle/hoseWays.test.ts
 * Cost: see bendTree; a place costs the bends, and few lines of sight
 * Source: a shortest way past polygons bends only at corners that stick out of them (Lozano-Perez & Wesley 1979)
 */
export function hoseWays(ground: ClearGround, spigot: HoseSpigot): HoseWays {
  const stand = standAt(ground, spigot.at, MOST_IN_WALL_M);
  if (stand === undefined) {
    return { spigot, stand: null, bends: [], lengthM: () => Infinity, wayTo: () => undefined };
  }
  const bends = bendTree(ground.clear, stand.at);
  const find = (to: YardPoint): Found | undefined => {
    const end = standAt(ground, to);
    const last = end && lastBend(ground, bends, end.at);
    if (end === undefined || last === undefined) return undefined;
    return { end, bend: last.bend, lengthM: stand.wayM + last.lengthM + end.wayM };
  };
  const wayTo = (to: YardPoint): HoseWay | undefined => {
    const found = find(to);
    if (found === undefined) return undefined;
    const { end, bend, lengthM } = found;
    const bent = lineTo(bends, bend);
    const line = [...stand.way.slice(0, -1), ...bent, ...end.way.toReversed()];
    return { lengthM, line: withoutRepeats(line), bends: bent.slice(1) };
  };
  return { spigot, stand, bends, lengthM: (to) => find(to)?.lengthM ?? Infinity, wayTo };
}

interface Found {
  readonly end: Stand;
  readonly bend: number;
  readonly lengthM: number;
}

/** The bend the shortest way to a place on clear ground comes by last, and the length of that way. */
function lastBend(
  { clear }: ClearGround,
  bends: readonly Bend[],
  to: YardPoint,
): { readonly bend: number; readonly lengthM: number } | undefined {
  const offers: { bend: number; lengthM: number }[] = [];
  for (let bend = 0; bend < bends.length; bend++) {
    const { at, soFarM, wedge } = bends[bend] as Bend;
    const [dx, dy] = [to.xM - at.xM, to.yM - at.yM];
    if (isInWedge(wedge, dx, dy)) offers.push({ bend, lengthM: soFarM + Math.sqrt(dx * dx + dy * dy) });
  }
  offers.sort((a, b) => a.lengthM - b.lengthM);
  return offers.find(({ bend }) => clear.isClear((bends[bend] as Bend).at, to));
}

/** From the start to a bend. */
function lineTo(bends: readonly Bend[], last: number): YardPoint[] {
  const line: YardPoint[] = [];
  for (let at = last; at >= 0; at = (bends[at] as Bend).via) line.push((bends[at] as Bend).at);
  return line.reverse();
}

/** Nearer than this, two places of a way are one: a hair beside an edge. */
const SAME_PLACE_M = 1e-8;

function withoutRepeats(line: readonly YardPoint[]): YardPoint[] {
  const kept: YardPoint[] = [];
  for (const place of line) {
    const last = kept.at(-1);
    if (last === undefined || distanceM(last, place) > SAME_PLACE_M) kept.push(place);
  }
  return kept;
}
