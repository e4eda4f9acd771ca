import { ringBounds } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import { type Ends, GAIN_M, type Leg, turnedRun } from './leg.ts';
import { apartM, bestOnRing } from './ringEntry.ts';

/**
 * Moves one run of legs to where the whole way is shortest, either way round.
 *
 * @param legs changed in place
 * @returns true when the run was moved
 * Cost: n
 */
export function moveRun(legs: Leg[], i: number, size: number, ends: Ends): boolean {
  const run = legs.slice(i, i + size);
  const rest = [...legs.slice(0, i), ...legs.slice(i + size)];
  const first = run[0] as Leg;
  const leaveOf = (k: number): YardPoint | null | undefined => (k < 0 ? ends.from : rest[k]?.leave);
  const enterOf = (k: number): YardPoint | null | undefined => rest[k]?.enter ?? ends.to;
  const wayM = (k: number, enter: YardPoint, leave: YardPoint): number =>
    apartM(leaveOf(k), enter) + apartM(leave, enterOf(k + 1)) - apartM(leaveOf(k), enterOf(k + 1));
  let bestM = wayM(i - 1, first.enter, (run.at(-1) as Leg).leave) - GAIN_M;
  let best: { gap: number; run: Leg[] } | undefined;
  const ways = waysOf(run);
  const leastM = leastAdded(run);
  // The gap after leg k of the others; -1 is before the first.
  for (let k = -1; k < rest.length && bestM > 0; k++) {
    if (k === i - 1 || leastM(leaveOf(k), enterOf(k + 1)) >= bestM) continue;
    for (const way of ways(leaveOf(k) ?? undefined, enterOf(k + 1) ?? undefined)) {
      const addedM = wayM(k, way.enter, way.leave);
      if (addedM >= bestM) continue;
      bestM = addedM;
      best = { gap: k, run: way.run() };
    }
  }
  if (best === undefined) return false;
  rest.splice(best.gap + 1, 0, ...best.run);
  legs.splice(0, legs.length, ...rest);
  return true;
}

type Place = YardPoint | null | undefined;

/** A bound on what a run adds to a gap, of little cost where the true figure is looked for all round a ring. */
function leastAdded(run: readonly Leg[]): (before: Place, after: Place) => number {
  const first = run[0] as Leg;
  if (run.length > 1 || !first.walk.isRing) return () => -Infinity;
  const { minXM, minYM, maxXM, maxYM } = ringBounds(first.walk.line);
  const toBoxM = (from: Place): number => {
    if (from == null) return 0;
    const dx = Math.max(minXM - from.xM, 0, from.xM - maxXM);
    const dy = Math.max(minYM - from.yM, 0, from.yM - maxYM);
    return Math.sqrt(dx * dx + dy * dy);
  };
  return (before, after) => toBoxM(before) + toBoxM(after) - apartM(before, after);
}

interface Way {
  readonly enter: YardPoint;
  readonly leave: YardPoint;
  readonly run: () => Leg[];
}

/** The ways a run can be walked in a gap: either way round, or, for a ring alone, from where it suits the gap. */
function waysOf(run: readonly Leg[]): (before?: YardPoint, after?: YardPoint) => Way[] {
  const first = run[0] as Leg;
  const last = run.at(-1) as Leg;
  if (run.length === 1 && first.walk.isRing) {
    return (before, after) => {
      const at = bestOnRing(first.walk.line, before ?? after ?? first.enter, after ?? before ?? first.enter);
      return [{ enter: at, leave: at, run: () => [{ walk: first.walk, enter: at, leave: at }] }];
    };
  }
  const both = [
    { enter: first.enter, leave: last.leave, run: () => [...run] },
    { enter: last.leave, leave: first.enter, run: () => turnedRun(run) },
  ];
  return () => both;
}
