import { ok, type Result, trouble } from '../result.ts';
import { type Degrees, degrees } from './brands.ts';
import { type Reading, readQuantity } from './parseQuantity.ts';
import { plainSpelling } from './readTerms.ts';

type AngleUnit = '°' | "'" | '"';
const ANGLE: Reading<AngleUnit> = {
  factors: { '°': 1, "'": 1 / 60, '"': 1 / 3600 },
  names: { '°': '°', deg: '°', degree: '°', degrees: '°', d: '°', "'": "'", min: "'", '"': '"', sec: '"' },
  next: { '°': "'", "'": '"' },
  expected: '45°, 45° 30′ or N45E',
};

/** The sixteen points of the compass from north, clockwise, 22.5° apart. */
const POINTS = 'n nne ne ene e ese se sse s ssw sw wsw w wnw nw nnw'.split(' ');

/**
 * A compass bearing in [0, 360), clockwise from north: "90", "45°", "45° 30'", "-10", a point of the compass
 * ("NE"), or a quadrant bearing of a deed or plat ("N45E", "S 30° W").
 *
 * Problems: value/missing, value/not-a-number, value/unknown-unit, value/out-of-range, naming `field`
 */
export function parseAngle(typed: string, field: string): Result<Degrees> {
  const text = plainSpelling(typed);
  const point = POINTS.indexOf(text);
  if (point >= 0) return ok(degrees(point * 22.5));
  const [, from, within, towards] = /^([ns]) ?(.*\d.*?) ?([ew])$/.exec(text) ?? [];
  const read = readQuantity(within ?? typed, field, ANGLE, '°', typed);
  if (!read.ok) return read;
  const [least, most] = within === undefined ? [-360, 360] : [0, 90];
  if (read.value < least || read.value > most) {
    return trouble({ kind: 'value/out-of-range', where: { field }, facts: { least, most, unit: '°' } });
  }
  const turned = towards === 'e' ? read.value : -read.value;
  const bearingDeg = within === undefined ? read.value : from === 'n' ? turned : 180 - turned;
  return ok(degrees(((bearingDeg % 360) + 360) % 360));
}
