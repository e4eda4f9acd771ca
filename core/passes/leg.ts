import type { YardPoint } from '../spaces.ts';
import type { Pass } from './pass.ts';

/** A pass before it has a place in the order. */
export interface Walk {
  readonly kind: Pass['kind'];
  readonly line: readonly YardPoint[];
  /** A ring is walked from any point of it round; its last point is not its first. */
  readonly isRing: boolean;
}

/** A walk as it is walked: from `enter` to `leave`; round and back to the same point for a ring. */
export interface Leg {
  readonly walk: Walk;
  enter: YardPoint;
  leave: YardPoint;
}

/** Where the person stands before the first pass, and wants to be after the last; null = anywhere. */
export interface Ends {
  readonly from: YardPoint | null;
  readonly to: YardPoint | null;
}

/** An order is changed only for more than this: less is rounding, and would never end. */
export const GAIN_M = 1e-9;

/** Legs walked the other way, last first. */
export function turnedRun(run: readonly Leg[]): Leg[] {
  return run.toReversed().map(({ walk, enter, leave }) => ({ walk, enter: leave, leave: enter }));
}
