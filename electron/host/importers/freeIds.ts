/**
 * Ids not yet used in a yard, the same ones for the same yard and file: “zone-1”, “zone-2”. Counted up past
 * every id there is, so that a draft never takes the id of a row that is already drawn.
 */
export function freeIds(rows: readonly { readonly id: string }[]): (kind: string) => string {
  const taken = new Set(rows.map((row) => row.id));
  const next = new Map<string, number>();
  return (kind) => {
    let number = next.get(kind) ?? 1;
    while (taken.has(`${kind}-${number}`)) number++;
    next.set(kind, number + 1);
    return `${kind}-${number}`;
  };
}
