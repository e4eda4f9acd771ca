import { expect, test } from 'vitest';
import { lineLengthM } from '../../../core/kernel/index.ts';
import { shortestWay } from '../../../core/passes/shortestWay.ts';
import { points } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { seededRandom } from '../../support/randomYards.ts';

test('the shortest of random ways is that of a search through all of them', () => {
  const random = seededRandom(8);
  for (let round = 0; round < 60; round++) {
    const all = points(...Array.from({ length: 9 }, (): [number, number] => [random() * 10, random() * 10]));
    const free = all.map(() => all.map(() => random() < 0.35));
    const sees = (i: number, j: number): boolean => free[Math.min(i, j)]?.[Math.max(i, j)] === true;
    const apart = (i: number, j: number): number =>
      Math.hypot((all[i]?.xM ?? 0) - (all[j]?.xM ?? 0), (all[i]?.yM ?? 0) - (all[j]?.yM ?? 0));
    // Floyd and Warshall, all ways at once: another method.
    const way = all.map((_, i) => all.map((_, j) => (i === j ? 0 : sees(i, j) ? apart(i, j) : Infinity)));
    for (let k = 0; k < 9; k++) {
      way.forEach((row, i) => {
        way[i] = row.map((now, j) => Math.min(now, (row[k] ?? 0) + (way[k]?.[j] ?? 0)));
      });
    }
    const isFree = (a: (typeof all)[0], b: (typeof all)[0]): boolean => sees(all.indexOf(a), all.indexOf(b));
    const [from, to] = [all[7], all[8]];
    if (from === undefined || to === undefined || sees(7, 8)) continue;
    const found = shortestWay(from, to, all.slice(0, 7), isFree, sees);
    const expected = way[7]?.[8] ?? Infinity;
    if (expected === Infinity) expect(found).toBeUndefined();
    else expectNear(lineLengthM(found ?? []), expected, 1e-9, 'm');
  }
});
