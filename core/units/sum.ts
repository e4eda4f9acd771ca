/** Figures added up, the first first; none at all are 0. */
export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
