import type { YardPoint } from '../spaces.ts';
import { type Ends, GAIN_M, type Leg, turnedRun, type Walk } from './leg.ts';
import { moveRun } from './moveRun.ts';
import { apartM, bestOnRing, ringFrom } from './ringEntry.ts';

/** Rounds of improvement; each looks at every pair once. */
const MOST_ROUNDS = 40;
/** Pairs looked at in all, so that a very large section still ends. */
const MOST_LOOKS = 4_000_000;
/** Longest run of passes that is moved elsewhere as one. */
const MOVED_RUN = 3;

/**
 * An order with little walking between passes, and the way round each is walked. Nearest end first, then turned
 * and moved stretches while that shortens the way; rings are entered where it suits their neighbours.
 *
 * @param ends where the person stands, or null = at the first walk given; and where the way goes on
 * @returns lines in walking order; a ring closes on its entry point
 * Cost: n^2 a round, rounds and looks capped
 */
export function orderPasses(walks: readonly Walk[], ends: Ends): Walk[] {
  const legs = nearestFirst(walks, ends.from);
  let looks = 0;
  for (let round = 0; round < MOST_ROUNDS && looks < MOST_LOOKS; round++) {
    looks += legs.length * legs.length * (1 + 2 * MOVED_RUN);
    const turned = turnStretches(legs, ends);
    const moved = moveRuns(legs, ends);
    const entered = enterRings(legs, ends);
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
function turnStretches(legs: Leg[], ends: Ends): boolean {
  let isBetter = false;
  for (let i = 0; i < legs.length; i++) {
    for (let j = i; j < legs.length; j++) {
      const before = i === 0 ? ends.from : legs[i - 1]?.leave;
      const first = legs[i] as Leg;
      const last = legs[j] as Leg;
      const after = legs[j + 1]?.enter ?? ends.to;
      const nowM = apartM(before, first.enter) + apartM(last.leave, after);
      const turnedM = apartM(before, last.leave) + apartM(first.enter, after);
      if (turnedM > nowM - GAIN_M) continue;
      legs.splice(i, j - i + 1, ...turnedRun(legs.slice(i, j + 1)));
      isBetter = true;
    }
  }
  return isBetter;
}

/** Moves short runs to where they fit better, either way round; true when any was. */
function moveRuns(legs: Leg[], ends: Ends): boolean {
  let isBetter = false;
  for (let size = 1; size <= MOVED_RUN; size++) {
    for (let i = 0; i + size <= legs.length; i++) {
      if (moveRun(legs, i, size, ends)) isBetter = true;
    }
  }
  return isBetter;
}

/** Enters each ring where the way from the leg before to the leg after is shortest. */
function enterRings(legs: Leg[], ends: Ends): boolean {
  let isBetter = false;
  legs.forEach((leg, i) => {
    if (!leg.walk.isRing) return;
    const before = i === 0 ? ends.from : legs[i - 1]?.leave;
    const after = legs[i + 1]?.enter ?? ends.to;
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
