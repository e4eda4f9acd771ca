import type { TieSide } from '../tape/index.ts';
import { formatTape, type UnitSystem } from '../units/index.ts';
import { fullName, type NamedPoint } from './namedPoints.ts';
import type { Flag, StakedLine, Staking } from './stakeCuts.ts';

/** A flag as the table says it, in names and in readings of the tape alone. */
export type PrintedFlag = { readonly letter: string } & PrintedSetting;

export type PrintedSetting =
  | {
      readonly kind: 'edge';
      readonly along: string;
      readonly corner: string;
      readonly of: string;
      readonly towards: string;
      /** Square to the side; null = on it. */
      readonly off: string | null;
      readonly offSide: 'in' | 'out' | null;
    }
  | { readonly kind: 'line'; readonly along: string; readonly from: string; readonly towards: string }
  | {
      readonly kind: 'tapes';
      readonly first: string;
      readonly firstFrom: string;
      readonly second: string;
      readonly secondFrom: string;
      readonly side: TieSide;
    };

/** A line as the table says it: its two flags, its length, and its checks from them. */
export interface PrintedLine {
  readonly from: string;
  readonly to: string;
  readonly between: readonly [string, string];
  readonly length: string;
  readonly checks: readonly PrintedCheck[];
}

export interface PrintedCheck {
  readonly from: string;
  readonly to: string;
  readonly length: string;
}

/** All that is needed to set a plan's cut lines on the ground. */
export interface StakingTable {
  readonly flags: readonly PrintedFlag[];
  readonly lines: readonly PrintedLine[];
}

export function stakingTable({ flags, lines }: Staking, units: UnitSystem): StakingTable {
  return {
    flags: flags.map((flag) => printedFlag(flag, units)),
    lines: lines.map((line) => printedLine(line, units)),
  };
}

export function printedFlag({ letter, setting }: Flag, units: UnitSystem): PrintedFlag {
  const tape = (lengthM: number): string => formatTape(lengthM, units);
  if (setting.kind === 'edge') {
    const { corner, towards, alongM, off } = setting;
    return {
      letter,
      kind: 'edge',
      along: tape(alongM),
      corner: corner.own,
      of: corner.of ?? '',
      towards: towards.own,
      off: off === null ? null : tape(off.byM),
      offSide: off?.side ?? null,
    };
  }
  if (setting.kind === 'line') {
    const { from, towards, alongM } = setting;
    return { letter, kind: 'line', along: tape(alongM), from: fullName(from), towards: fullName(towards) };
  }
  const { first, second, side } = setting;
  return {
    letter,
    kind: 'tapes',
    first: tape(first.tapeM),
    firstFrom: fullName(first.point),
    second: tape(second.tapeM),
    secondFrom: fullName(second.point),
    side,
  };
}

export function printedLine({ cutLine, flags, lengthM, checks }: StakedLine, units: UnitSystem): PrintedLine {
  return {
    from: flags[0].letter,
    to: flags[1].letter,
    between: cutLine.between,
    length: formatTape(lengthM, units),
    checks: checks.map(({ from, to, lengthM: checkM }) => {
      return { from: letterOf(from), to: fullName(to), length: formatTape(checkM, units) };
    }),
  };
}

/** 'c' of 'flag c'. */
function letterOf({ own }: NamedPoint): string {
  return own.slice(own.lastIndexOf(' ') + 1);
}

/** One tape of a setting: its reading, and how it is laid. */
export interface SettingStep {
  readonly tape: string;
  readonly words: string;
}

/** How a flag is set, one tape a step. */
export function settingSteps(flag: PrintedSetting): readonly SettingStep[] {
  if (flag.kind === 'line') return [{ tape: flag.along, words: `from ${flag.from} towards ${flag.towards}` }];
  if (flag.kind === 'edge') {
    const { along, corner, of, towards, off, offSide } = flag;
    const first = { tape: along, words: `from ${corner} of ${of} towards ${towards}` };
    return off === null ? [first] : [first, { tape: off, words: `square ${offSide} from that edge` }];
  }
  const { first, firstFrom, second, secondFrom, side } = flag;
  return [
    { tape: first, words: `from ${firstFrom}` },
    { tape: second, words: `from ${secondFrom}, on your ${side} as you face it from the first` },
  ];
}

/** The same in one line: "12 ft 6 in from NE corner of back lawn towards NW corner". */
export function settingWords(flag: PrintedSetting): string {
  return settingSteps(flag)
    .map(({ tape, words }) => `${tape} ${words}`)
    .join(', ');
}

/** A check in words: "a to lamp post 31 ft 2 in". */
export function checkWords({ from, to, length }: PrintedCheck): string {
  return `${from} to ${to} ${length}`;
}
