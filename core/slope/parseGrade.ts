import { ok, type Result, trouble } from '../result.ts';
import { parseAngle, parseOffset } from '../units/index.ts';
import { gradeOf, gradeOfDegrees, MOST_GRADE } from './grade.ts';

const EXPECTED = '8 ft in 40 ft, 20 % or 11.3°';
/** What stands between rise and run. "in" is inches as well, so every place it could part the text is tried. */
const BETWEEN = /\s+(?:in|over|on|per|to)(?=\s)|[:/]/gi;

/**
 * A grade from what a person typed: "8 ft in 40 ft", "8 in in 12 ft", "8 in 40", "1:4" (rise first), "20 %",
 * "11.3°". Downhill is taken as the same slope uphill.
 *
 * Problems: value/missing, value/not-a-number, value/missing-unit ("20", and "8 in 40 ft", which may mean
 * inches), value/unknown-unit, value/not-positive (a run of nothing), value/too-steep, all naming `field`
 */
export function parseGrade(typed: string, field: string): Result<number> {
  const text = typed.trim().replace(/^[-\u2212\u2013+]\s*/, '');
  if (text === '') return trouble({ kind: 'value/missing', where: { field }, facts: {} });
  const percent = /^(.*?)\s*(?:%|percent|per cent|pct\.?)$/i.exec(text)?.[1];
  const read =
    percent !== undefined
      ? scaled(bareNumber(percent, field, typed), 0.01)
      : /[°º]|deg/i.test(text)
        ? steepDegrees(text, field)
        : riseInRun(text, field, typed);
  if (!read.ok) return read;
  const grade = read.value;
  if (grade <= MOST_GRADE) return ok(grade);
  return trouble({ kind: 'value/too-steep', where: { field }, facts: { grade, mostGrade: MOST_GRADE } });
}

function scaled(read: Result<number>, factor: number): Result<number> {
  return read.ok ? ok(Math.abs(read.value) * factor) : read;
}

function steepDegrees(text: string, field: string): Result<number> {
  const read = parseAngle(text, field);
  if (!read.ok) return read;
  // An overhang is no grade at all; what is asked of it is only that it be too steep.
  return ok(read.value < 90 ? gradeOfDegrees(read.value) : Number.POSITIVE_INFINITY);
}

function riseInRun(text: string, field: string, typed: string): Result<number> {
  let mixed = false;
  let level = false;
  for (const between of text.matchAll(BETWEEN)) {
    const rise = side(text.slice(0, between.index), field);
    const run = side(text.slice(between.index + between[0].length), field);
    if (rise === undefined || run === undefined) continue;
    if (rise.isBare !== run.isBare) mixed = true;
    else if (run.value === 0) level = true;
    else return ok(gradeOf(rise.value, Math.abs(run.value)));
  }
  if (level) return trouble({ kind: 'value/not-positive', where: { field: `run of ${field}` }, facts: {} });
  if (mixed || side(text, field) !== undefined) {
    const facts = { typed: typed.trim(), expected: EXPECTED };
    return trouble({ kind: 'value/missing-unit', where: { field }, facts });
  }
  return bareNumber(text, field, typed);
}

/** A length with its unit in metres, or a bare number as it is; undefined for neither. */
function side(text: string, field: string): { readonly value: number; readonly isBare: boolean } | undefined {
  const length = parseOffset(text, field, null);
  if (length.ok) return { value: length.value, isBare: false };
  const bare = parseOffset(text, field, 'm');
  return bare.ok ? { value: bare.value, isBare: true } : undefined;
}

/** Digits with nothing behind them. */
function bareNumber(text: string, field: string, typed: string): Result<number> {
  const read = side(text, field);
  if (read?.isBare) return ok(read.value);
  return trouble({ kind: 'value/not-a-number', where: { field }, facts: { typed: typed.trim() } });
}
