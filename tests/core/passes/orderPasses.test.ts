import { expect, test } from 'vitest';
import type { Walk } from '../../../core/passes/leg.ts';
import { orderPasses } from '../../../core/passes/orderPasses.ts';
import { points, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { seededRandom } from '../../support/randomYards.ts';

function lane(y: number, fromX = 0, toX = 20): Walk {
  return { kind: 'lane', line: points([fromX, y], [toX, y]), isRing: false };
}

const ANYWHERE = { from: null, to: null };

function offM(order: readonly Walk[]): number {
  return order.reduce((sum, walk, i) => {
    const before = order[i - 1]?.line.at(-1);
    const here = walk.line[0];
    return before === undefined || here === undefined
      ? sum
      : sum + Math.hypot(here.xM - before.xM, here.yM - before.yM);
  }, 0);
}

test('shuffled lanes are walked to and fro', () => {
  const order = orderPasses([lane(6), lane(0), lane(4), lane(2), lane(8)], {
    from: { xM: 0, yM: 0 },
    to: null,
  });
  expectNear(offM(order), 8, 1e-9, 'm'); // closed form: four steps of 2 m, none longer
});

test('a ring is entered next to the lanes and adds only the way to it', () => {
  const ring: Walk = { kind: 'perimeter', line: rect(-1, -1, 22, 10), isRing: true };
  const order = orderPasses([lane(0), lane(2), lane(4), lane(6), lane(8), ring], ANYWHERE);
  const closed = order.find((walk) => walk.kind === 'perimeter')?.line ?? [];
  expect(closed.at(-1)).toEqual(closed[0]); // a ring closes on its entry
  expectNear(offM(order), 9, 1e-9, 'm'); // closed form: four steps of 2 m and 1 m to the ring
});

test('every walk is walked once, and always in the same order', () => {
  const random = seededRandom(3);
  const walks = Array.from({ length: 40 }, () => lane(random() * 50, random() * 10, 12 + random() * 10));
  const order = orderPasses(walks, ANYWHERE);
  expect(order.length).toBe(40);
  const middles = (list: readonly Walk[]): number[] =>
    list.map((w) => w.line[0]?.yM ?? 0).sort((a, b) => a - b);
  expect(middles(order)).toEqual(middles(walks)); // a permutation
  expect(orderPasses(walks, ANYWHERE)).toEqual(order); // the law: same in, same out
});

test('nothing to walk gives nothing', () => {
  expect(orderPasses([], ANYWHERE)).toEqual([]); // no walks
});
