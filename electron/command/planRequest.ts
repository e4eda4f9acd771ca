import { ok, type Result } from '../../core/result.ts';
import type { Paper } from '../../core/sheet/index.ts';
import { parseAngle, parseArea, parseLength } from '../../core/units/index.ts';
import type { Job, LaneHeading } from '../../core/yard.ts';
import type { ReadArguments } from './readArguments.ts';

/** The flags of `plan` as figures; undefined where a flag is not given. */
export interface PlanFlags {
  readonly loadAreaM2: number | undefined;
  readonly swathM: number | undefined;
  readonly heading: LaneHeading | undefined;
  readonly policy: Job['policy'] | undefined;
  readonly paper: Paper | undefined;
  readonly spigot: string | undefined;
  readonly hoseM: number | undefined;
  /** '' is standard output. */
  readonly json: string | undefined;
  readonly pdf: string | undefined;
}

/** The flags read, or one sentence on what is wrong with them, or a problem of a figure. */
export type ReadPlanFlags = Result<PlanFlags> | { readonly ok: 'wrong'; readonly wrong: string };

export function readPlanFlags({ flags }: ReadArguments): ReadPlanFlags {
  const read = <T>(name: string, parse: (typed: string) => Result<T>): Result<T | undefined> => {
    const typed = flags.get(name);
    return typed === undefined ? ok(undefined) : parse(typed);
  };
  const loadArea = read('load-area', (typed) => parseArea(typed, '--load-area', null));
  const swath = read('swath', (typed) => parseLength(typed, '--swath', null));
  const hose = read('hose', (typed) => parseLength(typed, '--hose', null));
  const heading = read('heading', readHeading);
  for (const each of [loadArea, swath, hose, heading]) if (!each.ok) return each;
  const policy = flags.get('policy');
  if (policy !== undefined && policy !== 'even' && policy !== 'fewest') {
    return { ok: 'wrong', wrong: `--policy is even or fewest, not ${policy}` };
  }
  const paper = flags.get('paper')?.toLowerCase();
  if (paper !== undefined && paper !== 'letter' && paper !== 'a4') {
    return { ok: 'wrong', wrong: `--paper is letter or a4, not ${paper}` };
  }
  const spigot = flags.get('spigot');
  if ((spigot === undefined) !== !flags.has('hose')) {
    return { ok: 'wrong', wrong: '--spigot and --hose go together' };
  }
  return ok({
    loadAreaM2: loadArea.ok ? loadArea.value : undefined,
    swathM: swath.ok ? swath.value : undefined,
    hoseM: hose.ok ? hose.value : undefined,
    heading: heading.ok ? heading.value : undefined,
    policy,
    paper,
    spigot,
    json: flags.get('json'),
    pdf: flags.get('pdf'),
  });
}

function readHeading(typed: string): Result<LaneHeading> {
  if (typed === 'auto') return ok({ kind: 'best' });
  const angle = parseAngle(typed, '--heading');
  return angle.ok ? ok({ kind: 'picked', deg: angle.value }) : angle;
}
