import { describe, expect, test } from 'vitest';
import { type Pass, wetWalkM } from '../../../core/passes/index.ts';
import { type GroundPlan, planGround } from '../../../core/plan/index.ts';
import type { Region } from '../../../core/spaces.ts';
import { lShape, rect, region } from '../../support/builders.ts';
import { planRequest } from '../../support/planRequest.ts';
import { resolvedOf } from '../../support/randomGround.ts';

const SWATH_M = 1.8;
const ONE_LOAD_M2 = 2000;
const L = region(lShape(30, 20, 12, 9));

function plan(ground: Region, loadAreaM2: number): GroundPlan {
  const result = planGround(
    resolvedOf({ Yard: [ground] }),
    planRequest({ loadAreaM2, swathM: SWATH_M, markM: 0.1 }),
  );
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

/** Whichever of two passes is walked first, feet on the other are on its swath for at least this. */
function forcedM(passes: readonly Pass[]): number {
  const onto = (a: Pass, b: Pass): number => wetWalkM([a, b], [null, null], SWATH_M)[1] ?? 0;
  return passes.reduce(
    (sum, a, i) => sum + passes.slice(0, i).reduce((part, b) => part + Math.min(onto(a, b), onto(b, a)), 0),
    0,
  );
}

describe('nobody treads on treated turf', () => {
  test.each([
    ['a rectangle in one load', region(rect(0, 0, 20, 12)), ONE_LOAD_M2, 1],
    ['a rectangle in two loads', region(rect(0, 0, 20, 12)), 150, 2],
    ['a larger one in one load', region(rect(0, 0, 40, 25)), ONE_LOAD_M2, 1],
    ['a larger one in seven loads', region(rect(0, 0, 40, 25)), 150, 7],
    ['an L in four loads', L, 150, 4],
    ['an L in five loads', L, 100, 5],
  ] as const)('on %s', (_, ground, loadAreaM2, loads) => {
    const planned = plan(ground, loadAreaM2);
    expect(planned.loads.length).toBe(loads); // ground over load area, rounded up
    expect(planned.wetM).toBeLessThan(1e-6); // the aim: none
  });
});

describe('where passes must overlap by more than half a swath, little is added to what that forces', () => {
  // Round a corner that sticks into the ground the perimeter pass bends into the lane that ends beside it; a lane that
  // goes straight on past a bed runs along the bed's own pass. Their ways are what else is counted: half a swath a turn.
  test.each([
    ['an L', L],
    ['a rectangle with a house', region(rect(0, 0, 40, 30), rect(12, 9, 8, 6))],
    ['a smaller one with a large house', region(rect(0, 0, 30, 20), rect(8, 6, 9, 7))],
    ['an L with a house', region(lShape(30, 20, 12, 9), rect(4, 4, 6, 5))],
  ])('on %s', (_, ground) => {
    const { wetM, passes } = plan(ground, ONE_LOAD_M2);
    const leastM = forcedM(passes);
    expect(leastM).toBeGreaterThan(0); // else it belongs to those above
    expect(wetM).toBeLessThan(leastM + 1.5 * SWATH_M); // three turns onto it at most
  });
});
