import { ok, type Result, trouble } from '../../core/result.ts';
import { FOOT_M, formatSignificant, lengthFigure, parseLength, USUAL_UNITS } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';

/** More than this of its scale no picture is out that anything can be measured on. */
const MOST_SCALE_PERCENT = 50;

/** How sure a point is, from what was typed; nothing typed = not stated. Nought is refused: it is never true. */
export function readPointSigma(typed: string, units: UnitSystem): Result<number | null> {
  return typed.trim() === '' ? ok(null) : parseLength(typed, '± of a corner', USUAL_UNITS[units].length);
}

/** How sure a scale is, from percent typed, as a part of one; as `readPointSigma`. */
export function readScaleSigma(typed: string): Result<number | null> {
  const where = { field: '± of the scale' };
  const text = typed.replace(/%|percent|per cent/i, '').trim();
  if (text === '') return ok(null);
  const percent = Number(text);
  if (Number.isNaN(percent)) return trouble({ kind: 'value/not-a-number', where, facts: { typed } });
  if (percent <= 0) return trouble({ kind: 'value/not-positive', where, facts: {} });
  if (percent <= MOST_SCALE_PERCENT) return ok(percent / 100);
  const facts = { least: 0, most: MOST_SCALE_PERCENT, unit: '%' };
  return trouble({ kind: 'value/out-of-range', where, facts });
}

/** The figure of a point's sigma in the person's length unit, small ones too: "0.16". */
export function pointSigmaFigure(sigmaM: number, units: UnitSystem): string {
  return formatSignificant(units === 'us' ? sigmaM / FOOT_M : sigmaM, 3);
}

/** "0.16 ft". */
export function pointSigmaText(sigmaM: number, units: UnitSystem): string {
  return `${pointSigmaFigure(sigmaM, units)} ${lengthFigure(0, units).unit}`;
}

/** "0.34%" of a scale's sigma. */
export function scaleSigmaText(sigma: number): string {
  return `${formatSignificant(100 * sigma, 2)}%`;
}
