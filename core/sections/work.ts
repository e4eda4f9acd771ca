/** What a search may still spend, counted in corners looked at, so that the same ground always gets the same cuts. */
export interface Work {
  left: number;
}

/** How many corners looked at the steps of a search take as long as, for each corner, chord or hole they go over. */
export const FACING_WORK = 8;
export const SPLIT_WORK = 6;
export const CHORD_WORK = 8;
export const SOLVE_WORK = 6;

export function spend(work: Work, corners: number): void {
  work.left -= corners;
}

export function isSpent({ left }: Work): boolean {
  return left < 0;
}

/** Does a step with a part of what is left, so that something is left for what comes after. */
export function withPart<T>(work: Work, part: number, step: (own: Work) => T): T {
  const most = Math.max(0, part * work.left);
  const own = { left: most };
  const done = step(own);
  spend(work, most - own.left);
  return done;
}
