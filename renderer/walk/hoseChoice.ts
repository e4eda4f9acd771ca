import { USUAL_CLEARANCE_M } from '../../core/hose/index.ts';
import { type Result, trouble } from '../../core/result.ts';
import { FOOT_M, parseOffset, USUAL_UNITS } from '../../core/units/index.ts';
import type { JobHose, Mark, UnitSystem, Yard } from '../../core/yard.ts';

/** Farther off corners than this, a hose is not kept by anybody. */
const MOST_CLEARANCE_M = 10 * FOOT_M;

/** What is in the hand of somebody who says no more than that there is a hose: 50 ft, or 15 m. */
export function usualHose(units: UnitSystem): JobHose {
  return { lengthM: units === 'us' ? 50 * FOOT_M : 15, spigotIds: null, clearanceM: USUAL_CLEARANCE_M };
}

export function spigotsOf({ marks }: Pick<Yard, 'marks'>): readonly Mark[] {
  return marks.filter(({ kind }) => kind === 'spigot');
}

/** The spigots of a job once one is ticked or unticked; all of them is any, so that a new one counts too. */
export function spigotChoice(
  yard: Pick<Yard, 'marks'>,
  { spigotIds }: JobHose,
  id: string,
): readonly string[] | null {
  const all = spigotsOf(yard).map((mark) => mark.id);
  const ticked = spigotIds ?? all;
  const next = ticked.includes(id) ? ticked.filter((other) => other !== id) : [...ticked, id];
  return all.every((each) => next.includes(each)) ? null : all.filter((each) => next.includes(each));
}

/** Problems: those of `parseOffset`; value/out-of-range below nothing or past `MOST_CLEARANCE_M` */
export function readClearance(typed: string, units: UnitSystem): Result<number> {
  const field = 'length kept off corners';
  const unit = USUAL_UNITS[units].length;
  const read = parseOffset(typed, field, unit);
  if (!read.ok || (read.value >= 0 && read.value <= MOST_CLEARANCE_M)) return read;
  const most = Math.floor(MOST_CLEARANCE_M / (units === 'us' ? FOOT_M : 1));
  return trouble({ kind: 'value/out-of-range', where: { field }, facts: { least: 0, most, unit } });
}
