/** One number and what stands behind it: "12 ft" is {value: 12, unit: 'ft'}; '' = nothing stands behind it. */
export interface Term {
  readonly value: number;
  readonly unit: string;
}

// A mixed number, a fraction, or digits with commas exactly between thousands. A comma anywhere else is
// refused, so that a decimal comma ("3,81") is never silently read as another number.
const NUMBER = /\s*([+-]?)(?:(\d+) (\d+)\/(\d+)|(\d+)\/(\d+)|((?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d*)?|\.\d+))/y;
// Letters or a mark. A 2 belongs to the unit ("ft2") unless something follows it at once ("12ft2in").
const UNIT = /\s*((?:[a-z]+(?: [a-z]+)*(?:2(?! ?[a-z"'\d.]))?|[°"']|))/y;

/**
 * What was typed, in one spelling: lower case, plain quotes, minus and fractions, "2" for squared, no full
 * stops behind abbreviations, single spaces.
 */
export function plainSpelling(typed: string): string {
  return typed
    .toLowerCase()
    .replace(/[\u2032\u2019\u2018]/g, "'")
    .replace(/[\u2033\u201d\u201c]|''/g, '"')
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\u00bd/g, ' 1/2')
    .replace(/\u00bc/g, ' 1/4')
    .replace(/\u00be/g, ' 3/4')
    .replace(/\u00b2|\^2/g, '2')
    .replace(/º/g, '°')
    .replace(/([a-z])\./g, '$1 ')
    .replace(/\s+/g, ' ')
    .trim();
}

/**
 * The terms of a text in plain spelling, left to right; undefined when any of it is left over or is no number.
 * Only the first term may have a sign.
 */
export function readTerms(text: string): Term[] | undefined {
  const terms: Term[] = [];
  let at = 0;
  while (at < text.length) {
    NUMBER.lastIndex = at;
    const number = NUMBER.exec(text);
    if (number === null || (terms.length > 0 && number[1] !== '')) return undefined;
    const value = amountOf(number);
    if (!Number.isFinite(value)) return undefined;
    UNIT.lastIndex = NUMBER.lastIndex;
    const unit = UNIT.exec(text)?.[1] ?? '';
    terms.push({ value: number[1] === '-' ? -value : value, unit });
    at = UNIT.lastIndex;
    if (text.slice(at).trim() === '') return terms;
  }
  return undefined;
}

function amountOf(number: RegExpExecArray): number {
  const [, , whole, mixedOver, mixedUnder, over, under, decimal] = number;
  if (decimal !== undefined) return Number(decimal.replaceAll(',', ''));
  if (whole !== undefined) return Number(whole) + Number(mixedOver) / Number(mixedUnder);
  return Number(over) / Number(under);
}
