import { ok, type Result, trouble } from '../../core/result.ts';
import { FOOT_M, parseOffset, USUAL_UNITS } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { WIDEST_STRIP_M } from '../../core/zones/index.ts';

/**
 * A width to keep off: nothing typed, or 0, is none.
 *
 * Problems: those of `parseOffset`; value/out-of-range below nothing or past `WIDEST_STRIP_M`
 */
export function readStripWidth(typed: string, units: UnitSystem): Result<number | null> {
  if (typed.trim() === '') return ok(null);
  const field = 'width kept off';
  const unit = USUAL_UNITS[units].length;
  const read = parseOffset(typed, field, unit);
  if (!read.ok) return read;
  if (read.value === 0) return ok(null);
  if (read.value > 0 && read.value <= WIDEST_STRIP_M) return read;
  const most = Math.floor(WIDEST_STRIP_M / (units === 'us' ? FOOT_M : 1));
  return trouble({ kind: 'value/out-of-range', where: { field }, facts: { least: 0, most, unit } });
}
