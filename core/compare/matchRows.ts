interface Named {
  readonly id: string;
  readonly name: string;
}

export interface Matched<T> {
  /** The later rows in their order, each with the earlier one it was; undefined = it is new. */
  readonly later: readonly { readonly now: T; readonly was: T | undefined }[];
  readonly gone: readonly T[];
}

/**
 * Which row of the earlier state is which of the later: by id, and what is left by name. A yard drawn anew has other
 * ids and often the same names. Of rows of one name the earliest are matched first.
 */
export function matchRows<T extends Named>(before: readonly T[], after: readonly T[]): Matched<T> {
  const left = new Set(before);
  const known = new Map<T, T>();
  const pair = (isSame: (was: T, now: T) => boolean): void => {
    for (const now of after) {
      if (known.has(now)) continue;
      const was = [...left].find((row) => isSame(row, now));
      if (was === undefined) continue;
      known.set(now, was);
      left.delete(was);
    }
  };
  pair((was, now) => was.id === now.id);
  pair((was, now) => was.name === now.name);
  return { later: after.map((now) => ({ now, was: known.get(now) })), gone: [...left] };
}
