import type { Problem } from '../../core/problems.ts';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { Leg } from '../../core/tape/index.ts';
import { parseOffset, USUAL_UNITS } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { readLengthAndDirection } from '../drawing/index.ts';

/**
 * Lengths parted by commas or lines: "0, 8.2, 12 ft 6 in".
 *
 * Problems: value/missing, and those of `parseOffset`, naming which length it is
 */
export function readLengths(typed: string, field: string, units: UnitSystem): Result<readonly number[]> {
  const parts = partsOf(typed, /[,;\n]/);
  if (parts.length === 0) return trouble({ kind: 'value/missing', where: { field }, facts: {} });
  return readEach(parts, (part, i) => parseOffset(part, `${field} ${i + 1}`, USUAL_UNITS[units].length));
}

/**
 * Legs of a walked chain, a line each as at the foot of the sketch: "60 90", "12 ft 6 in < n45e", "40 l90".
 *
 * Problems: value/missing, and those of the foot line, naming the leg
 */
export function readLegs(typed: string, units: UnitSystem): Result<readonly Leg[]> {
  const lines = partsOf(typed, /\n/);
  if (lines.length === 0) return trouble({ kind: 'value/missing', where: { field: 'legs' }, facts: {} });
  return readEach(lines, (line, i): Result<Leg> => {
    const read = readLengthAndDirection(line, units);
    if (!read.ok) return trouble(ofLeg(read.problems[0], i));
    const { lengthM, direction } = read.value;
    return ok({ lengthM, direction: direction.kind === 'pointer' ? { kind: 'on' } : direction });
  });
}

function partsOf(typed: string, between: RegExp): readonly string[] {
  return typed
    .split(between)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

function readEach<T>(
  parts: readonly string[],
  read: (part: string, at: number) => Result<T>,
): Result<readonly T[]> {
  const values: T[] = [];
  for (const [at, part] of parts.entries()) {
    const one = read(part, at);
    if (!one.ok) return one;
    values.push(one.value);
  }
  return ok(values);
}

/** The same problem, at a leg rather than at the foot line. */
function ofLeg(problem: Problem, at: number): Problem {
  if (!('field' in problem.where)) return problem;
  return { ...problem, where: { field: `leg ${at + 1}, ${problem.where.field}` } } as Problem;
}
