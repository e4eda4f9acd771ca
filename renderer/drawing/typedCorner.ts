import type { Problem } from '../../core/problems.ts';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import { parseAngle, parseLength } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { alongBearing, bearingDegOf, moved } from './plane.ts';

/**
 * Reads a corner that was typed rather than pointed at. A comma parts coordinates, `<` or a space parts a
 * length from its direction:
 *
 *     0,0           east and north of the yard's origin
 *     @3,-2         east and north of the last corner
 *     12.5          that far towards the pointer, else straight on
 *     12.5 < 90     that far on the compass bearing 90 (from north, clockwise); also "12.5 90"
 *     12.5 l90      that far after turning left 90 from the last edge; r90 turns right
 *
 * @param chain corners so far, oldest first; @param aim where the pointer is, null when it is away
 * Problems: value/not-a-number, value/missing (no corner to measure from, no edge to turn from)
 */
export function readTypedCorner(
  text: string,
  chain: Ring,
  aim: YardPoint | null,
  units: UnitSystem,
): Result<YardPoint> {
  const trimmed = text.trim();
  const last = chain[chain.length - 1];
  const relative = trimmed.startsWith('@');
  const parts = (relative ? trimmed.slice(1) : trimmed).split(',');
  if (parts.length === 2) {
    const [east = '', north = ''] = parts;
    const eastM = readCoordinate(east, 'east', units);
    const northM = readCoordinate(north, 'north', units);
    if (!eastM.ok) return eastM;
    if (!northM.ok) return northM;
    if (!relative) return ok({ xM: eastM.value, yM: northM.value });
    return last === undefined ? trouble(missing('first corner')) : ok(moved(last, eastM.value, northM.value));
  }
  if (last === undefined) return trouble(missing('first corner'));
  const read = readLengthAndDirection(trimmed, units);
  if (!read.ok) return read;
  const bearing = bearingFrom(read.value.direction, chain, last, aim);
  return bearing.ok ? ok(alongBearing(last, read.value.lengthM, bearing.value)) : bearing;
}

/** The unit of a bare number at the foot line. */
export function typedUnit(units: UnitSystem): 'ft' | 'm' {
  return units === 'us' ? 'ft' : 'm';
}

/** A length that may be zero or run west or south. */
function readCoordinate(text: string, field: string, units: UnitSystem): Result<number> {
  const [, sign, size = ''] = /^\s*([-−+]?)\s*(.*)$/.exec(text) ?? [];
  if (/^0+(\.0*)?$/.test(size.trim())) return ok(0);
  const length = parseLength(size, field, typedUnit(units));
  if (!length.ok) return length;
  return ok(sign === '-' || sign === '−' ? -length.value : length.value);
}

export type Direction =
  | { readonly kind: 'pointer' }
  | { readonly kind: 'bearing'; readonly deg: number }
  | { readonly kind: 'turn'; readonly rightDeg: number };

/** A length and which way it goes, as it was typed. */
export interface LengthAndDirection {
  readonly lengthM: number;
  readonly direction: Direction;
}

/** Two bare numbers, the second perhaps a turn: never feet and inches. */
const LENGTH_THEN_ANGLE = /^([\d.]+)\s+([lr]?\s*[\d.]+°?)$/i;

/** "12 ft 6 in" is a length, "12 ft n45e" a length and a bearing: the whole is tried first. */
export function readLengthAndDirection(text: string, units: UnitSystem): Result<LengthAndDirection> {
  const bare = LENGTH_THEN_ANGLE.exec(text);
  const whole = parseLength(text, 'length', typedUnit(units));
  if (whole.ok && bare === null) return ok({ lengthM: whole.value, direction: { kind: 'pointer' } });
  const split = bare ?? /^(.+?)\s*<\s*(.+)$/.exec(text) ?? /^(.+)\s+(\S+)$/.exec(text);
  if (split === null) return whole.ok ? ok({ lengthM: whole.value, direction: { kind: 'pointer' } }) : whole;
  const [, lengthText = '', directionText = ''] = split;
  const lengthM = parseLength(lengthText, 'length', typedUnit(units));
  if (!lengthM.ok) return lengthM;
  const direction = readDirection(directionText);
  return direction.ok ? ok({ lengthM: lengthM.value, direction: direction.value }) : direction;
}

function readDirection(text: string): Result<Direction> {
  const turn = /^([lr])\s*(.+)$/i.exec(text);
  const angle = parseAngle(turn?.[2] ?? text, 'angle');
  if (!angle.ok) return angle;
  if (turn === null) return ok({ kind: 'bearing', deg: angle.value });
  return ok({ kind: 'turn', rightDeg: turn[1]?.toLowerCase() === 'r' ? angle.value : -angle.value });
}

function bearingFrom(
  direction: Direction,
  chain: Ring,
  last: YardPoint,
  aim: YardPoint | null,
): Result<number> {
  if (direction.kind === 'bearing') return ok(direction.deg);
  const before = chain[chain.length - 2];
  const lastEdge = before && bearingDegOf(before, last);
  if (direction.kind === 'turn') {
    return lastEdge === undefined
      ? trouble(missing('an edge to turn from'))
      : ok(lastEdge + direction.rightDeg);
  }
  const towards = (aim && bearingDegOf(last, aim)) ?? lastEdge;
  return towards === undefined ? trouble(missing('direction')) : ok(towards);
}

function missing(field: string): Problem {
  return { kind: 'value/missing', where: { field }, facts: {} };
}
