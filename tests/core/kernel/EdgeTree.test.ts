import { expect, test } from 'vitest';
import { type Edge, EdgeTree, edgesOf } from '../../../core/kernel/EdgeTree.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { ringBounds } from '../../../core/kernel/index.ts';
import { rect } from '../../support/builders.ts';
import { between, randomStar, seededRandom } from '../../support/randomYards.ts';

const meet = (a: Edge, b: Edge): boolean =>
  a.west <= b.east && b.west <= a.east && a.south <= b.north && b.south <= a.north;

test.each([1, 3, 8, 9, 64, 65, 500])('finds of %i edges what looking at every one finds', (count) => {
  const random = seededRandom(count);
  const edges = edgesOf(
    Array.from({ length: count }, () => ({ xM: between(random, 0, 9), yM: between(random, 0, 9) })),
  );
  const tree = new EdgeTree(edges);
  const pairs: string[] = [];
  expect(tree.somePair((a, b) => pairs.push(`${a.at} ${b.at}`) < 0)).toBe(false);
  const every = edges.flatMap((a) =>
    edges.filter((b) => a.at < b.at && meet(a, b)).map((b) => `${a.at} ${b.at}`),
  );
  expect(pairs.sort()).toEqual(every.sort());
  for (let i = 0; i < 20; i++) {
    const box = ringBounds(rect(between(random, -1, 9), between(random, -1, 9), 1, 0.5));
    const found: number[] = [];
    tree.someIn(box, ({ at }) => found.push(at) < 0);
    const { minXM: west, minYM: south, maxXM: east, maxYM: north } = box;
    const within = edges.filter((edge) => meet(edge, { ...edge, west, south, east, north }));
    expect(found.sort()).toEqual(within.map(({ at }) => at).sort());
  }
  for (let i = 0; i < 20; i++) {
    const [from, to] = [0, 1].map(() => ({ xM: between(random, -1, 9), yM: between(random, -1, 9) }));
    if (from === undefined || to === undefined) throw new Error('two ends');
    const along = new Set<number>();
    tree.someAlong(from, to, ({ at }) => along.add(at).size < 0);
    // Every edge the line crosses is among them, by the sides its ends lie on.
    const side = (a: YardPoint, b: YardPoint, c: YardPoint) =>
      Math.sign((b.xM - a.xM) * (c.yM - a.yM) - (b.yM - a.yM) * (c.xM - a.xM));
    const crossed = edges.filter(
      (edge) =>
        side(from, to, edge.from) !== side(from, to, edge.to) &&
        side(edge.from, edge.to, from) !== side(edge.from, edge.to, to),
    );
    expect(crossed.filter(({ at }) => !along.has(at))).toEqual([]);
  }
});

test('stops at the first that passes', () => {
  const tree = new EdgeTree(edgesOf(randomStar(seededRandom(1), 100, { xM: 0, yM: 0 }, 10, 0.2)));
  let asked = 0;
  expect(tree.somePair(() => ++asked === 3)).toBe(true);
  expect(asked).toBe(3);
});

test('of no edges finds nothing', () => {
  const none = new EdgeTree([]);
  expect(none.somePair(() => true)).toBe(false);
  expect(none.someIn(ringBounds(rect(0, 0, 1, 1)), () => true)).toBe(false);
});
