import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { UnitSystem } from '../units/index.ts';
import { pointCost, tapeCost, THROUGH_A_HOUSE } from './ease.ts';
import type { NamedPoint } from './namedPoints.ts';
import { asPrintedM } from './placing.ts';
import { pointsOf } from './pointsUsed.ts';
import type { Setting } from './setting.ts';
import type { IsBlocked } from './tapeWalls.ts';

/** A flag as its printed figures set it. */
export interface SetFlag {
  /** Held to as `flag c`; its place is where it was set. */
  readonly point: NamedPoint;
  readonly setting: Setting;
}

/** One more tape from a flag of a line to a place its setting did not use: a slip of the tape shows in it. */
export interface Check {
  readonly from: NamedPoint;
  readonly to: NamedPoint;
  readonly lengthM: number;
}

/** The two flags of a line. */
export type SetLine = readonly [SetFlag, SetFlag];

/** A tape shorter than this is no check of the place, only of the last step to it. */
const LEAST_CHECK_M = 1;
/** Places this near together are one place under two names. */
const SAME_PLACE_M = 0.3;
/** A slip shows in a tape that comes out longer or shorter by so much of it. */
const SHOWN_SHARE = 0.35;
/** What a check is worth for each flag whose slip nothing else shows. */
const FLAG_SHOWN = 12;
/** What a check costs that would hardly show a slip, as a share of the slip it hides. */
const PER_SLIP_HIDDEN = 4;
/** A tape laid along the very line the flag was set along is no diagonal. */
const NO_DIAGONAL = 6;
const ALONG_COSINE = 0.97;

/**
 * One check for each line, and a second where a slip of one of its flags would else show in no length and no check.
 *
 * @param points what a tape can be held to besides the flags
 */
export function checksOf(
  lines: readonly SetLine[],
  points: readonly NamedPoint[],
  units: UnitSystem,
  isBlocked: IsBlocked,
): readonly (readonly Check[])[] {
  const flags = new Map(lines.flat().map((flag) => [flag.point, flag]));
  const shown = new Set(lines.flatMap(shownByLength));
  const checks = lines.map((): Check[] => []);
  const ends = [...points, ...flags.keys()];
  const add = (line: SetLine, place: number, from: readonly SetFlag[]): void => {
    const check = bestCheck(line, from, { ends, flags, shown, isBlocked });
    if (check === undefined) return;
    for (const { point } of showing(check.from, check.to, flags)) shown.add(point);
    const lengthM = asPrintedM(distanceM(check.from.at, check.to.at), units);
    checks[place]?.push({ ...check, lengthM });
  };
  lines.forEach((line, place) => {
    add(line, place, line);
  });
  lines.forEach((line, place) => {
    const hidden = line.filter(({ point }) => !shown.has(point));
    if (hidden.length > 0) add(line, place, hidden);
  });
  return checks;
}

interface Ground {
  readonly ends: readonly NamedPoint[];
  readonly flags: ReadonlyMap<NamedPoint, SetFlag>;
  readonly shown: ReadonlySet<NamedPoint>;
  readonly isBlocked: IsBlocked;
}

function bestCheck(
  line: SetLine,
  fromFlags: readonly SetFlag[],
  { ends, flags, shown, isBlocked }: Ground,
): Pick<Check, 'from' | 'to'> | undefined {
  let best: { readonly from: NamedPoint; readonly to: NamedPoint; readonly cost: number } | undefined;
  for (const flag of fromFlags) {
    const from = flag.point;
    const used = [...line.map(({ point }) => point), ...pointsOf(flag.setting)];
    for (const to of ends) {
      const lengthM = distanceM(from.at, to.at);
      const least = pointCost(to) + tapeCost(lengthM) - 2 * FLAG_SHOWN;
      if (lengthM < LEAST_CHECK_M || (best !== undefined && least >= best.cost)) continue;
      if (used.some((point) => distanceM(point.at, to.at) <= SAME_PLACE_M)) continue;
      const news = showing(from, to, flags).filter(({ point }) => !shown.has(point));
      const cost =
        pointCost(to) +
        tapeCost(lengthM) +
        slipCost(flag, to.at) -
        FLAG_SHOWN * news.length +
        (isBlocked(from.at, to.at) ? THROUGH_A_HOUSE : 0);
      if (best === undefined || cost < best.cost) best = { from, to, cost };
    }
  }
  return best;
}

/** The flags of a line whose slips its own length shows. */
function shownByLength([one, other]: SetLine): readonly NamedPoint[] {
  return [
    ...(shownShare(one, other.point.at) >= SHOWN_SHARE ? [one.point] : []),
    ...(shownShare(other, one.point.at) >= SHOWN_SHARE ? [other.point] : []),
  ];
}

/** The flags at the ends of a check whose slips it shows. */
function showing(
  from: NamedPoint,
  to: NamedPoint,
  flags: ReadonlyMap<NamedPoint, SetFlag>,
): readonly SetFlag[] {
  return [
    [from, to],
    [to, from],
  ].flatMap(([end, other]): readonly SetFlag[] => {
    const flag = end && flags.get(end);
    return flag && other && shownShare(flag, other.at) >= SHOWN_SHARE ? [flag] : [];
  });
}

/** How well a tape to a place shows a slip: the share of the slip by which it comes out longer or shorter. */
function shownShare({ point, setting }: SetFlag, to: YardPoint): number {
  const towards = unit(point.at, to);
  return Math.min(
    ...slips(point.at, setting).map((slip) => Math.abs(slip.x * towards.x + slip.y * towards.y)),
  );
}

function slipCost(flag: SetFlag, to: YardPoint): number {
  const share = shownShare(flag, to);
  const isAlong = flag.setting.kind !== 'tapes' && share > ALONG_COSINE;
  return PER_SLIP_HIDDEN * (1 - share) + (isAlong ? NO_DIAGONAL : 0);
}

/** Which ways the flag moves by slips of its tapes: along its side or line, or round the end of the other tape. */
function slips(at: YardPoint, setting: Setting): readonly { readonly x: number; readonly y: number }[] {
  if (setting.kind !== 'tapes') {
    const [from, towards] =
      setting.kind === 'edge' ? [setting.corner, setting.towards] : [setting.from, setting.towards];
    return [unit(from.at, towards.at)];
  }
  return [setting.first, setting.second].map(({ point }) => {
    const { x, y } = unit(point.at, at);
    return { x: -y, y: x };
  });
}

function unit(from: YardPoint, to: YardPoint): { readonly x: number; readonly y: number } {
  const lengthM = distanceM(from, to) || 1;
  return { x: (to.xM - from.xM) / lengthM, y: (to.yM - from.yM) / lengthM };
}
