import { distanceM } from '../kernel/index.ts';
import { Defect } from '../result.ts';
import type { Cut, CutLine } from '../sections/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { UnitSystem } from '../units/index.ts';
import type { Yard } from '../yard.ts';
import { type Check, checksOf, type SetFlag } from './checks.ts';
import { edgeWays } from './edgeWays.ts';
import { flagLetter } from './flagLetter.ts';
import { flagPlaces } from './flagPlaces.ts';
import { lineWays } from './lineWays.ts';
import { type NamedPoint, yardPoints } from './namedPoints.ts';
import { asPrintedM } from './placing.ts';
import type { Setting, Way } from './setting.ts';
import { straightSides } from './straightSides.ts';
import { tapeWalls } from './tapeWalls.ts';
import { twoTapeWays } from './twoTapeWays.ts';

/** One end of one or more cut lines. */
export interface Flag {
  /** 'a' for the first, 'aa' after 'z'; no two of a plan are alike, and a flag is set from those before it. */
  readonly letter: string;
  /** Where the cut ends. */
  readonly at: YardPoint;
  readonly setting: Setting;
  /** Where the printed figures put it. */
  readonly asSet: YardPoint;
}

/** A cut line between its two flags, and what shows that they stand right. Lengths are as printed. */
export interface StakedLine {
  readonly cutLine: CutLine;
  readonly flags: readonly [Flag, Flag];
  readonly lengthM: number;
  /** One, or two where neither the length nor one check shows a slip of either flag. */
  readonly checks: readonly Check[];
}

export interface Staking {
  readonly flags: readonly Flag[];
  /** In the order of the plan's cut lines. */
  readonly lines: readonly StakedLine[];
}

/** The part of a plan that is staked. */
export interface CutLines {
  readonly cuts: readonly Cut[];
  readonly cutLines: readonly CutLine[];
}

/**
 * Letters every end of the cut lines and finds the easiest way to set it whose printed figures put it where it
 * belongs; lengths and checks are those between the flags as so set.
 *
 * @param yard whose outlines the plan was made of
 * Accuracy: cuts set by the printed figures end within 5 cm of where they are, on any yard with a corner, landmark or
 *   curve to hold a tape to; checked in tests/core/staking/rebuild.test.ts
 * Cost: flags times sides; flags times points squared, of which the best sixteen
 */
export function stakeCuts(
  yard: Pick<Yard, 'outlines' | 'marks'>,
  { cuts, cutLines }: CutLines,
  units: UnitSystem,
): Staking {
  const points = yardPoints(yard);
  const sides = straightSides(yard.outlines, points);
  const isBlocked = tapeWalls(yard.outlines);
  const stood: Standing[] = [];
  for (const place of flagPlaces(cuts, cutLines)) {
    const onLine = stood.filter(({ rows }) => rows.some((row) => place.rows.includes(row)));
    const ways = [
      ...edgeWays(place.at, sides, units, isBlocked),
      ...lineWays(place.at, onLine, units, isBlocked),
      ...twoTapeWays(place.at, [...points.all, ...stood.map(({ point }) => point)], units, isBlocked),
    ];
    const { setting, asSet } = easiest(ways);
    const flag = { letter: flagLetter(stood.length), at: place.at, setting, asSet };
    stood.push({ flag, setting, point: flagPoint(flag), place: place.at, rows: place.rows });
  }
  const ends = cutLines.map(({ from, to }) => [nearest(stood, from), nearest(stood, to)] as const);
  const checks = checksOf(ends, points.all, units, isBlocked);
  const lines = cutLines.map((cutLine, i): StakedLine => {
    const [from, to] = ends[i] as (typeof ends)[number];
    const lengthM = asPrintedM(distanceM(from.flag.asSet, to.flag.asSet), units);
    return { cutLine, flags: [from.flag, to.flag], lengthM, checks: checks[i] ?? [] };
  });
  return { flags: stood.map(({ flag }) => flag), lines };
}

interface Standing extends SetFlag {
  readonly flag: Flag;
  readonly place: YardPoint;
  readonly rows: readonly number[];
}

/** How other flags and checks name it: it stands where it was set. */
function flagPoint({ letter, asSet }: Flag): NamedPoint {
  return { at: asSet, kind: 'flag', own: `flag ${letter}`, of: null, outline: null };
}

function easiest(ways: readonly Way[]): Way {
  const [first, ...others] = ways;
  if (first === undefined) throw new Defect('a yard with a cut has no corner, landmark or curve');
  return others.reduce((best, next) => (next.cost < best.cost ? next : best), first);
}

function nearest(stood: readonly Standing[], end: YardPoint): Standing {
  const [first, ...others] = stood;
  if (first === undefined) throw new Defect('a cut line without a flag');
  return others.reduce(
    (best, next) => (distanceM(next.place, end) < distanceM(best.place, end) ? next : best),
    first,
  );
}
