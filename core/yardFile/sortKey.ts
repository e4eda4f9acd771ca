/** Room left between neighbours: sixteen rows fit one after another into the same gap before it is full. */
export const SORT_STRIDE = 65_536;

/**
 * The sort key of a row put between two neighbours, so that no other row has to be written. Rows are listed
 * by rising key.
 *
 * @param before key of the row above, null = the new row is first
 * @param after  key of the row below, null = the new row is last
 * @returns null when there is no whole number left between them: the list is then numbered afresh
 */
export function sortKeyBetween(before: number | null, after: number | null): number | null {
  if (before === null && after === null) return SORT_STRIDE;
  const key =
    before === null
      ? (after as number) - SORT_STRIDE
      : after === null
        ? before + SORT_STRIDE
        : Math.floor(before + (after - before) / 2);
  const fits = (before === null || key > before) && (after === null || key < after);
  return fits && Number.isSafeInteger(key) ? key : null;
}

/** Keys for a list numbered afresh. */
export function freshSortKey(place: number): number {
  return (place + 1) * SORT_STRIDE;
}
