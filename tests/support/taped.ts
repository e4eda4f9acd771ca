import { expect } from 'vitest';
import { problemText } from '../../core/problemText.ts';
import type { Result } from '../../core/result.ts';
import type { Place } from '../../core/tape/index.ts';

/** At the origin, the first side running east. */
export const EAST: Place = { at: { xM: 0, yM: 0 }, bearingDeg: 90 };
/** Somewhere else and askew. */
export const AWAY: Place = { at: { xM: -812.25, yM: 431.5 }, bearingDeg: 213.7 };

/** The value of a result, or a failed test that says why there is none. */
export function given<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  expect.fail(problemText(result.problems[0], 'metric').what);
}

/** The kinds of problems a result gave. */
export function kindsOf(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map(({ kind }) => kind);
}
