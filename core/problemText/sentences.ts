import { formatLength, formatSignificant, type UnitSystem } from '../units/index.ts';

/** What is wrong and what mends it, each one or two whole sentences. */
export interface ProblemText {
  readonly what: string;
  readonly mend: string;
}

export function say(what: string, mend: string): ProblemText {
  return { what, mend };
}

/** A field's name is written as it stands on its ruled line; a sentence begins with a capital. */
export function atStart(field: string): string {
  return field.charAt(0).toUpperCase() + field.slice(1);
}

/** "17% more", "0.25% less": how far a ratio is from 1. */
export function moreOrLess(ratio: number, more = 'more', less = 'less'): string {
  return `${formatSignificant(Math.abs(ratio - 1) * 100, 2)}% ${ratio < 1 ? less : more}`;
}

/** 2 π a of WGS 84, in metres. What a damaged file holds beyond it has no digits worth reading. */
const ROUND_THE_EARTH_M = 40_075_017;

export function lengthOrNone(lengthM: number, units: UnitSystem): string {
  if (Number.isNaN(lengthM)) return 'no number';
  return Math.abs(lengthM) > ROUND_THE_EARTH_M ? 'more than round the earth' : formatLength(lengthM, units);
}
