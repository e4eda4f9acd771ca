import { Defect } from '../result.ts';

/**
 * Values rounded for print so that they add up to the printed total, to the last digit: each is a whole number
 * of steps, less than one step from its true value, and together they are the total rounded to steps.
 * Print the total as the sum of what is returned. An exact value stays exact. Parts of parts may be apportioned in turn, against the printed part.
 *
 * @param values zero or more; none negative
 * @param step   the last digit shown, above zero, in the unit of the values
 * @param total  their sum, or that sum as apportioned before
 * Cost: n log n
 * Source: largest remainder (Hamilton's method): every value gets its whole steps, and the steps then missing
 * go one each to the largest remainders, earlier values first among equals. They are never more than the
 * values with a remainder, since each remainder is below one step. A whole value that floating arithmetic left
 * at 95.99999999999999 steps has the largest remainder of all, and so gets its last step back.
 */
export function apportionForDisplay<V extends number>(
  values: readonly V[],
  step: number,
  total: number,
): V[] {
  const steps = values.map((value) => Math.floor(value / step));
  const remainders = values.map((value, i) => value / step - (steps[i] as number));
  const missing = Math.round(total / step) - steps.reduce((sum, count) => sum + count, 0);
  if (!(step > 0) || !(missing >= 0 && missing <= values.length)) {
    throw new Defect(`values do not make up the total ${total} in steps of ${step}`);
  }
  const byRemainder = values
    .map((_, i) => i)
    .sort((a, b) => (remainders[b] as number) - (remainders[a] as number) || a - b);
  for (const i of byRemainder.slice(0, missing)) steps[i] = (steps[i] as number) + 1;
  return steps.map((count) => (count * step) as V);
}
