import { ok, type Result } from '../../core/result.ts';
import type { Paper } from '../../core/sheet/index.ts';
import { parseAngle, parseArea, parseLength, parseSpeed } from '../../core/units/index.ts';
import type { Job, LaneHeading } from '../../core/yard.ts';
import type { FlagTable, ReadArguments } from './readArguments.ts';

export const PLAN_FLAGS = {
  'load-area': 'value',
  swath: 'value',
  pace: 'value',
  step: 'value',
  heading: 'value',
  last: 'value',
  turn: 'value',
  rounds: 'value',
  policy: 'value',
  start: 'value',
  finish: 'value',
  spigot: 'value',
  hose: 'value',
  clear: 'value',
  flags: 'alone',
  json: 'path',
  pdf: 'value',
  paper: 'value',
} as const satisfies FlagTable;

/** The flags of `plan` as figures; undefined where a flag is not given. */
export interface PlanFlags {
  readonly loadAreaM2: number | undefined;
  readonly swathM: number | undefined;
  readonly paceMPerS: number | undefined;
  readonly stepM: number | undefined;
  readonly heading: LaneHeading | undefined;
  readonly rounds: Job['rounds'] | undefined;
  readonly policy: Job['policy'] | undefined;
  readonly paper: Paper | undefined;
  /** As typed: a place of the yard, or the name of a mark. */
  readonly start: string | undefined;
  readonly finish: string | undefined;
  /** The name of a mark. */
  readonly spigot: string | undefined;
  readonly hoseM: number | undefined;
  readonly clearanceM: number | undefined;
  /** The table of where to set the flags is asked for. */
  readonly withFlags: boolean;
  /** '' is standard output. */
  readonly json: string | undefined;
  readonly pdf: string | undefined;
}

/** The flags read, or one sentence on what is wrong with them, or a problem of a figure. */
export type ReadPlanFlags = Result<PlanFlags> | { readonly ok: 'wrong'; readonly wrong: string };

export function readPlanFlags({ flags }: ReadArguments): ReadPlanFlags {
  const wrong = wrongChoice(flags) ?? wrongCompany(flags);
  if (wrong !== undefined) return { ok: 'wrong', wrong };
  const read = <T>(
    name: string,
    parse: (typed: string, field: string) => Result<T>,
  ): Result<T | undefined> => {
    const typed = flags.get(name);
    return typed === undefined ? ok(undefined) : parse(typed, `--${name}`);
  };
  const length = (typed: string, field: string): Result<number> => parseLength(typed, field, null);
  const loadArea = read('load-area', (typed, field) => parseArea(typed, field, null));
  const swath = read('swath', length);
  const pace = read('pace', (typed, field) => parseSpeed(typed, field, null));
  const step = read('step', length);
  const hose = read('hose', length);
  const clear = read('clear', length);
  const heading = readHeading(flags);
  for (const each of [loadArea, swath, pace, step, hose, clear, heading]) if (!each.ok) return each;
  const given = <T>(each: Result<T>): T | undefined => (each.ok ? each.value : undefined);
  return ok({
    loadAreaM2: given(loadArea),
    swathM: given(swath),
    paceMPerS: given(pace),
    stepM: given(step),
    hoseM: given(hose),
    clearanceM: given(clear),
    heading: given(heading),
    rounds: flags.has('rounds') ? (flags.get('rounds') === '2' ? 2 : 1) : undefined,
    policy: flags.get('policy') as Job['policy'] | undefined,
    paper: flags.get('paper')?.toLowerCase() as Paper | undefined,
    start: flags.get('start'),
    finish: flags.get('finish'),
    spigot: flags.get('spigot'),
    withFlags: flags.has('flags'),
    json: flags.get('json'),
    pdf: flags.get('pdf'),
  });
}

const CHOICES: Readonly<Record<string, readonly string[]>> = {
  policy: ['even', 'fewest'],
  paper: ['letter', 'a4'],
  rounds: ['1', '2'],
  turn: ['45', '90'],
};

function wrongChoice(flags: ReadonlyMap<string, string>): string | undefined {
  for (const [name, choices] of Object.entries(CHOICES)) {
    const typed = flags.get(name);
    if (typed === undefined) continue;
    const plain = name === 'paper' ? typed.toLowerCase() : typed.replace(/°$/, '');
    if (!choices.includes(plain)) return `--${name} is ${choices.join(' or ')}, not ${typed}`;
  }
  return undefined;
}

/** Flags that need others, or exclude them. */
function wrongCompany(flags: ReadonlyMap<string, string>): string | undefined {
  if (flags.has('last') !== flags.has('turn')) return '--last and --turn go together';
  if (flags.has('last') && flags.has('heading')) return 'give --heading, or --last and --turn, not both';
  if (flags.has('spigot') && !flags.has('hose')) return '--spigot needs --hose';
  if (flags.has('clear') && !flags.has('hose')) return '--clear needs --hose';
  return undefined;
}

function readHeading(flags: ReadonlyMap<string, string>): Result<LaneHeading | undefined> {
  const [typed, last] = [flags.get('heading'), flags.get('last')];
  if (typed === 'auto') return ok({ kind: 'best' });
  if (typed !== undefined) {
    const angle = parseAngle(typed, '--heading');
    return angle.ok ? ok({ kind: 'picked', deg: angle.value }) : angle;
  }
  if (last === undefined) return ok(undefined);
  const angle = parseAngle(last, '--last');
  const byDeg = flags.get('turn')?.startsWith('45') ? 45 : 90;
  return angle.ok ? ok({ kind: 'turned', lastDeg: angle.value, byDeg }) : angle;
}
