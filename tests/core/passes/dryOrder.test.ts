import { expect, test } from 'vitest';
import { dryOrder } from '../../../core/passes/dryOrder.ts';
import { layPasses } from '../../../core/passes/layPasses.ts';
import type { Ends, Walk } from '../../../core/passes/leg.ts';
import { orderPasses } from '../../../core/passes/orderPasses.ts';
import { wetWalkM } from '../../../core/passes/wetWalk.ts';
import type { Region } from '../../../core/spaces.ts';
import { lShape, rect, region, regularPolygon } from '../../support/builders.ts';

const ANYWHERE: Ends = { from: null, to: null };

function wetM(order: readonly Walk[], swathM: number): number {
  const ways = order.map(({ line }, i) => {
    const [from, to] = [order[i - 1]?.line.at(-1), line[0]];
    return from === undefined || to === undefined ? null : [from, to];
  });
  const passes = order.map(({ line }) => ({ line, sectionId: 'A1', round: 1 as const }));
  return wetWalkM(passes, ways, swathM).reduce((sum, each) => sum + each, 0);
}

function offM(order: readonly Walk[]): number {
  return order.reduce((sum, { line }, i) => {
    const [from, to] = [order[i - 1]?.line.at(-1), line[0]];
    return from === undefined || to === undefined ? sum : sum + Math.hypot(to.xM - from.xM, to.yM - from.yM);
  }, 0);
}

test.each([
  [20, 12],
  [30, 9],
  [40, 25],
])('nobody treads on treated turf in a rectangle of %i m x %i m', (widthM, heightM) => {
  const { walks } = layPasses(region(rect(0, 0, widthM, heightM)), 1.8, null);
  const order = dryOrder(walks, ANYWHERE, 1.8);
  expect(order.length).toBe(walks.length); // each walked
  expect(wetM(order, 1.8)).toBeLessThan(1e-6); // the aim: none
});

test('with a ring on the outside walked to at the end, lanes stay dry from any corner', () => {
  const { walks } = layPasses(region(rect(0, 0, 30, 20)), 1.8, null);
  for (const from of rect(0, 0, 30, 20)) {
    expect(wetM(dryOrder(walks, { from, to: null }, 1.8), 1.8)).toBeLessThan(1e-6); // the aim: none
  }
});

test('walking and treading on treated turf come to no more than in the shortest order', () => {
  const grounds: Region[] = [
    region(lShape(30, 20, 12, 9), rect(4, 4, 6, 5)),
    region(rect(0, 0, 40, 30), regularPolygon({ xM: 12, yM: 14 }, 4, 9), rect(24, 8, 6, 8)),
  ];
  for (const ground of grounds) {
    const { walks } = layPasses(ground, 1.8, null);
    const [short, dry] = [orderPasses(walks, ANYWHERE), dryOrder(walks, ANYWHERE, 1.8)];
    // The law of the choice: a metre on treated turf counts as one walked.
    expect(offM(dry) + wetM(dry, 1.8)).toBeLessThanOrEqual(offM(short) + wetM(short, 1.8) + 1e-6);
    expect(dryOrder(walks, ANYWHERE, 1.8)).toEqual(dry); // the law: same in, same out
  }
});
