import { expect, test } from 'vitest';
import { type Edge, edgeGrid } from '../../../core/passes/edgeGrid.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

function meets(p: YardPoint, q: YardPoint, { a, b }: Edge): boolean {
  const side = (o: YardPoint, d: YardPoint, t: YardPoint): number =>
    Math.sign((d.xM - o.xM) * (t.yM - o.yM) - (d.yM - o.yM) * (t.xM - o.xM));
  return side(p, q, a) !== side(p, q, b) && side(a, b, p) !== side(a, b, q);
}

test('no edge that a line meets is missed', () => {
  const random = seededRandom(21);
  const point = (): YardPoint => ({ xM: between(random, -30, 40), yM: between(random, 5, 25) });
  const edges = Array.from({ length: 200 }, (): Edge => ({ a: point(), b: point() }));
  const near = edgeGrid(edges);
  let met = 0;
  for (let i = 0; i < 300; i++) {
    const [p, q] = [point(), point()];
    const found = new Set(near(p, q));
    for (const edge of edges) {
      if (!meets(p, q, edge)) continue; // by orientation signs: another method than cells
      met++;
      expect(found.has(edge)).toBe(true);
    }
  }
  expect(met).toBeGreaterThan(1000); // the case does arise
});
