import type { YardPoint } from '../spaces.ts';
import type { Pass } from './pass.ts';
import { apartM, bestOnRing, ringFrom } from './ringEntry.ts';

/** A pass before it has a place in the order. */
export interface Walk {
  readonly kind: Pass['kind'];
  readonly line: readonly YardPoint[];
  /** A ring is walked from any point of it round; its last point is not its first. */
  readonly isRing: boolean;
}

/** A walk as it is walked: from `enter` to `leave`; round and back to the same point for a ring. */
interface Leg {
  readonly walk: Walk;
  enter: YardPoint;
  leave: YardPoint;
}

/** Rounds of improvement; each looks at every pair once. */
const MOST_ROUNDS = 40;
/** Pairs looked at in all, so that a very large section still ends. */
const MOST_LOOKS = 4_000_000;
/** Longest run of passes that is moved elsewhere as one. */
const MOVED_RUN = 3;
const GAIN_M = 1e-9;

/**
 * An order with little walking between passes, and the way round each is walked. Nearest end first, then turned
 * and moved stretches while that shortens the way; rings are entered where it suits their neighbours.
 *
 * @param startAt where the person stands; null = at the first walk given
 * @returns lines in walking order; a ring closes on its entry point
 * Cost: n^2 a round, rounds and looks capped
 */
export function orderPasses(walks: readonly Walk[], startAt: YardPoint | null): Walk[] {
  const legs = nearestFirst(walks, startAt);
  let looks = 0;
  for (let round = 0; round < MOST_ROUNDS && looks < MOST_LOOKS; round++) {
    looks += legs.length * legs.length * (1 + 2 * MOVED_RUN);
    const turned = turnStretches(legs, startAt);
    const moved = moveRuns(legs, startAt);
    const entered = enterRings(legs, startAt);
    if (!turned && !moved && !entered) break;
  }
  return legs.map(({ walk, enter }) => ({ ...walk, line: lineFrom(walk, enter) }));
}

function nearestFirst(walks: readonly Walk[], startAt: YardPoint | null): Leg[] {
  const left = [...walks];
  const legs: Leg[] = [];
  let here = startAt ?? walks[0]?.line[0];
  while (left.length > 0 && here !== undefined) {
    let best: Leg | undefined;
    let place = 0;
    for (const [i, walk] of left.entries()) {
      const leg = entered(walk, here);
      if (best !== undefined && apartM(here, leg.enter) >= apartM(here, best.enter)) continue;
      best = leg;
      place = i;
    }
    if (best === undefined) break;
    legs.push(best);
    left.splice(place, 1);
    here = best.leave;
  }
  return legs;
}

function entered(walk: Walk, from: YardPoint): Leg {
  if (walk.isRing) {
    const at = bestOnRing(walk.line, from, from);
    return { walk, enter: at, leave: at };
  }
  const first = walk.line[0] as YardPoint;
  const last = walk.line.at(-1) as YardPoint;
  return apartM(from, first) <= apartM(from, last)
    ? { walk, enter: first, leave: last }
    : { walk, enter: last, leave: first };
}

/** Turns round every stretch of legs that is shorter the other way; true when any was. */
function turnStretches(legs: Leg[], startAt: YardPoint | null): boolean {
  let isBetter = false;
  for (let i = 0; i < legs.length; i++) {
    for (let j = i; j < legs.length; j++) {
      const before = i === 0 ? startAt : legs[i - 1]?.leave;
      const first = legs[i] as Leg;
      const last = legs[j] as Leg;
      const after = legs[j + 1]?.enter;
      const nowM = apartM(before, first.enter) + apartM(last.leave, after);
      const turnedM = apartM(before, last.leave) + apartM(first.enter, after);
      if (turnedM > nowM - GAIN_M) continue;
      legs.splice(i, j - i + 1, ...turnedRun(legs.slice(i, j + 1)));
      isBetter = true;
    }
  }
  return isBetter;
}

function turnedRun(run: readonly Leg[]): Leg[] {
  return run.toReversed().map(({ walk, enter, leave }) => ({ walk, enter: leave, leave: enter }));
}

/** Moves short runs to where they fit better, either way round; true when any was. */
function moveRuns(legs: Leg[], startAt: YardPoint | null): boolean {
  let isBetter = false;
  for (let size = 1; size <= MOVED_RUN; size++) {
    for (let i = 0; i + size <= legs.length; i++) {
      if (moveRun(legs, i, size, startAt)) isBetter = true;
    }
  }
  return isBetter;
}

function moveRun(legs: Leg[], i: number, size: number, startAt: YardPoint | null): boolean {
  const run = legs.slice(i, i + size);
  const rest = [...legs.slice(0, i), ...legs.slice(i + size)];
  const first = run[0] as Leg;
  const leaveOf = (k: number): YardPoint | null | undefined => (k < 0 ? startAt : rest[k]?.leave);
  const wayM = (k: number, enter: YardPoint, leave: YardPoint): number =>
    apartM(leaveOf(k), enter) + apartM(leave, rest[k + 1]?.enter) - apartM(leaveOf(k), rest[k + 1]?.enter);
  let bestM = wayM(i - 1, first.enter, (run.at(-1) as Leg).leave) - GAIN_M;
  let best: { gap: number; run: Leg[] } | undefined;
  const ways = waysOf(run);
  // The gap after leg k of the others; -1 is before the first.
  for (let k = -1; k < rest.length && bestM > 0; k++) {
    if (k === i - 1) continue;
    for (const way of ways(leaveOf(k) ?? undefined, rest[k + 1]?.enter)) {
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

/** Enters each ring where the way from the leg before to the leg after is shortest. */
function enterRings(legs: Leg[], startAt: YardPoint | null): boolean {
  let isBetter = false;
  legs.forEach((leg, i) => {
    if (!leg.walk.isRing) return;
    const before = i === 0 ? startAt : legs[i - 1]?.leave;
    const after = legs[i + 1]?.enter;
    const at = bestOnRing(leg.walk.line, before ?? after ?? leg.enter, after ?? before ?? leg.enter);
    const nowM = apartM(before, leg.enter) + apartM(leg.enter, after);
    if (apartM(before, at) + apartM(at, after) > nowM - GAIN_M) return;
    leg.enter = at;
    leg.leave = at;
    isBetter = true;
  });
  return isBetter;
}

/** The walk's points from where it is entered. */
function lineFrom(walk: Walk, enter: YardPoint): YardPoint[] {
  if (walk.isRing) return ringFrom(walk.line, enter);
  return enter === walk.line[0] ? [...walk.line] : walk.line.toReversed();
}
