import { USUAL_CLEARANCE_M } from '../../core/hose/index.ts';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { YardPoint } from '../../core/spaces.ts';
import { parseOffset } from '../../core/units/index.ts';
import type { Job, JobHose, Mark, Yard } from '../../core/yard.ts';
import type { PlanFlags } from './planFlags.ts';

/**
 * A job with what the flags ask for in place of its own.
 * Problems: value/no-such-mark, and those of parseOffset
 */
export function askedJob(yard: Yard, job: Job, flags: PlanFlags): Result<Job> {
  const startAt = placeOf(yard.marks, flags.start, '--start');
  if (!startAt.ok) return startAt;
  const finishAt = placeOf(yard.marks, flags.finish, '--finish');
  if (!finishAt.ok) return finishAt;
  const hose = hoseOf(yard.marks, flags);
  if (!hose.ok) return hose;
  return ok({
    ...job,
    policy: flags.policy ?? job.policy,
    heading: flags.heading ?? job.heading,
    rounds: flags.rounds ?? job.rounds,
    startAt: startAt.value ?? job.startAt,
    finishAt: finishAt.value ?? job.finishAt,
    hose: hose.value ?? job.hose,
  });
}

/** "4,-2.5" east and north in the yard's frame, metres unless a unit is typed; or the name of a mark. */
function placeOf(
  marks: readonly Mark[],
  typed: string | undefined,
  field: string,
): Result<YardPoint | undefined> {
  if (typed === undefined) return ok(undefined);
  const mark = markNamed(marks, typed);
  if (mark !== undefined) return ok(mark.at);
  const halves = typed.split(',');
  if (halves.length !== 2) return noSuchMark(marks, typed, field);
  const [east = '', north = ''] = halves;
  const xM = parseOffset(east, field, 'm');
  if (!xM.ok) return xM;
  const yM = parseOffset(north, field, 'm');
  return yM.ok ? ok({ xM: xM.value, yM: yM.value }) : yM;
}

function hoseOf(marks: readonly Mark[], flags: PlanFlags): Result<JobHose | undefined> {
  const { hoseM, spigot, clearanceM = USUAL_CLEARANCE_M } = flags;
  if (hoseM === undefined) return ok(undefined);
  if (spigot === undefined) return ok({ lengthM: hoseM, spigotIds: null, clearanceM });
  const spigots = marks.filter(({ kind }) => kind === 'spigot');
  const mark = markNamed(spigots, spigot);
  if (mark === undefined) return noSuchMark(spigots, spigot, '--spigot');
  return ok({ lengthM: hoseM, spigotIds: [mark.id], clearanceM });
}

function markNamed(marks: readonly Mark[], name: string): Mark | undefined {
  const plain = (text: string): string => text.trim().toLowerCase();
  return marks.find((mark) => mark.name === name) ?? marks.find((mark) => plain(mark.name) === plain(name));
}

function noSuchMark(marks: readonly Mark[], typed: string, field: string): Result<never> {
  const known = marks.map(({ name }) => name);
  return trouble({ kind: 'value/no-such-mark', where: { field }, facts: { typed: typed.trim(), known } });
}
