import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import {
  type Litres,
  litres,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  type SquareMetres,
  squareMetres,
} from './brands.ts';
import { plainSpelling, readTerms, type Term } from './readTerms.ts';
import {
  AREA_UNITS,
  type AreaUnit,
  LENGTH_UNITS,
  type LengthUnit,
  SPEED_UNITS,
  type SpeedUnit,
  VOLUME_UNITS,
  type VolumeUnit,
} from './unitTables.ts';
import { AREA_NAMES, LENGTH_NAMES, SPEED_NAMES, VOLUME_NAMES } from './unitNames.ts';

/** What may be typed for one kind of quantity. */
export interface Reading<U extends string> {
  readonly factors: Readonly<Record<U, number>>;
  readonly names: Readonly<Record<string, U>>;
  /** The unit of a bare number that follows this one: inches after feet. */
  readonly next: Partial<Record<U, U>>;
  /** Examples for the person whose text has no unit or a wrong one. */
  readonly expected: string;
}

export const VOLUME: Reading<VolumeUnit> = {
  factors: VOLUME_UNITS,
  names: VOLUME_NAMES,
  next: {},
  expected: '32 fl oz, 4 gal, 500 mL or 2 L',
};
const LENGTH: Reading<LengthUnit> = {
  factors: LENGTH_UNITS,
  names: LENGTH_NAMES,
  next: { ft: 'in' },
  expected: '43.3 ft, 12 ft 6 in or 3.81 m',
};
export const AREA: Reading<AreaUnit> = {
  factors: AREA_UNITS,
  names: AREA_NAMES,
  next: {},
  expected: '1,000 ft², 100 m² or 0.25 acre',
};
const SPEED: Reading<SpeedUnit> = {
  factors: SPEED_UNITS,
  names: SPEED_NAMES,
  next: {},
  expected: '2.5 ft/s, 0.8 m/s or 2 mph',
};

/**
 * A length above zero from what a person typed: "43.3", "12'6\"", "12 ft 6 in", "3.81 m", "150 cm", "40ft".
 *
 * @param defaultUnit what a bare number is in; null = the unit has to be typed
 * Problems: value/missing, value/not-a-number, value/missing-unit, value/unknown-unit, value/not-positive, all
 * naming `field`. The same holds for the readers below.
 */
export function parseLength(typed: string, field: string, defaultUnit: LengthUnit | null): Result<Metres> {
  return positive(readQuantity(typed, field, LENGTH, defaultUnit), field, metres);
}

/** A length of either sign, or none: a coordinate or a shift. Otherwise as `parseLength`. */
export function parseOffset(typed: string, field: string, defaultUnit: LengthUnit | null): Result<Metres> {
  const read = readQuantity(typed, field, LENGTH, defaultUnit);
  return read.ok ? ok(metres(read.value)) : read;
}

/** "100m2", "1,000 ft²", "1000 sq ft", "0.25 acre". */
export function parseArea(typed: string, field: string, defaultUnit: AreaUnit | null): Result<SquareMetres> {
  return positive(readQuantity(typed, field, AREA, defaultUnit), field, squareMetres);
}

/** "32 fl oz", "4 gal", "500 mL", "1 gal 16 fl oz", "1 1/2 cups". A bare "oz" is refused: it may be a weight. */
export function parseVolume(typed: string, field: string, defaultUnit: VolumeUnit | null): Result<Litres> {
  return positive(readQuantity(typed, field, VOLUME, defaultUnit), field, litres);
}

/** "2.5 ft/s", "0.8 m/s", "1.7 mph", "3 km/h". */
export function parseSpeed(
  typed: string,
  field: string,
  defaultUnit: SpeedUnit | null,
): Result<MetresPerSecond> {
  const slashed = typed.replace(/\s*(?:\/|\bper\b)\s*(?=[a-z])/gi, ' per ');
  return positive(readQuantity(slashed, field, SPEED, defaultUnit, typed), field, metresPerSecond);
}

/** The SI value of a text of one kind of quantity, of any sign. */
export function readQuantity<U extends string>(
  typed: string,
  field: string,
  reading: Reading<U>,
  defaultUnit: U | null,
  shown: string = typed,
): Result<number> {
  const facts = { typed: shown.trim(), expected: reading.expected };
  const text = plainSpelling(typed);
  if (text === '') return trouble({ kind: 'value/missing', where: { field }, facts: {} });
  const terms = readTerms(text);
  if (terms === undefined) return trouble(notANumber(field, shown));
  let sum = 0;
  let before: U | undefined;
  for (const term of terms) {
    const unit = unitOf(term, reading, before === undefined ? defaultUnit : (reading.next[before] ?? null));
    if (unit === null) return trouble({ kind: 'value/missing-unit', where: { field }, facts });
    if (unit === undefined) return trouble({ kind: 'value/unknown-unit', where: { field }, facts });
    const factor = reading.factors[unit];
    // "12 ft 14 in" or "6 in 12 ft" is a slip of the hand, not a length
    if (before !== undefined && term.value * factor >= reading.factors[before]) {
      return trouble(notANumber(field, shown));
    }
    sum += (terms[0] as Term).value < 0 ? -Math.abs(term.value) * factor : term.value * factor;
    before = unit;
  }
  return Number.isFinite(sum) ? ok(sum) : trouble(notANumber(field, shown));
}

export function notANumber(field: string, typed: string): Problem {
  return { kind: 'value/not-a-number', where: { field }, facts: { typed: typed.trim() } };
}

/** Passes on a value above zero, branded. */
export function positive<B>(read: Result<number>, field: string, brand: (value: number) => B): Result<B> {
  if (!read.ok) return read;
  if (read.value <= 0) return trouble({ kind: 'value/not-positive', where: { field }, facts: {} });
  return ok(brand(read.value));
}

function unitOf<U extends string>(term: Term, reading: Reading<U>, bare: U | null): U | null | undefined {
  return term.unit === ''
    ? bare
    : Object.hasOwn(reading.names, term.unit)
      ? reading.names[term.unit]
      : undefined;
}
