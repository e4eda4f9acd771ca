import { ok, type Result } from '../../core/result.ts';
import { parseLength, USUAL_UNITS } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';

/** How well a corner is set out by tape where nobody says better. Common practice, no source: 5 cm, 0.15 ft. */
export const USUAL_WITHIN: Readonly<Record<UnitSystem, string>> = { us: '0.15', metric: '0.05' };

/**
 * One standard deviation of a corner as typed; nothing typed leaves it to the yard.
 *
 * Problems: those of `parseLength`
 */
export function readWithin(typed: string, units: UnitSystem): Result<number | null> {
  return typed.trim() === '' ? ok(null) : parseLength(typed, 'taped within', USUAL_UNITS[units].length);
}

export function withinNote(typed: string, units: UnitSystem): string {
  if (typed === '') return 'as the yard says';
  return typed === USUAL_WITHIN[units] ? 'a usual figure, not yours' : 'one standard deviation';
}

/** What is kept with the outline: the larger of what the person states and what the measuring itself shows. */
export function placingSigmaM(statedM: number | null, measuredM: number): number | null {
  return statedM === null && measuredM === 0 ? null : Math.max(statedM ?? 0, measuredM);
}
