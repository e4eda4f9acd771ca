import { describe, expect, test } from 'vitest';
import { clearGround } from '../../../core/hose/clearGround.ts';
import { hoseWays } from '../../../core/hose/hoseWays.ts';
import type { Region, YardPoint } from '../../../core/spaces.ts';
import { rect, region, regularPolygon } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const at = (xM: number, yM: number): YardPoint => ({ xM, yM });
const ways = (barriers: readonly Region[], from: YardPoint, clearanceM = 0) =>
  hoseWays(clearGround({ barriers, clearanceM }), { id: 's', name: 'front', at: from });
const HOUSE = region(rect(0, 0, 10, 4));

describe('the hose to a place', () => {
  test('is straight where nothing is in between', () => {
    expectNear(ways([HOUSE], at(5, 0)).lengthM(at(9, -5)), Math.hypot(4, 5), 1e-8, 'm'); // (5, 0) to (9, −5)
  });

  test('goes round a house by the nearer corners, and says where it lies', () => {
    const way = ways([HOUSE], at(4, 0)).wayTo(at(5, 6));
    // Along the wall to (0, 0), up to (0, 4), on to (5, 6): 4 + 4 + √(5² + 2²).
    expectNear(way?.lengthM ?? 0, 8 + Math.sqrt(29), 1e-8, 'm');
    expect(way?.line.map(({ xM, yM }) => [Math.round(xM * 1e6) / 1e6, Math.round(yM * 1e6) / 1e6])).toEqual([
      [4, -0],
      [0, 0],
      [0, 4],
      [5, 6],
    ]);
  });

  test('round a pond is two tangents and an arc', () => {
    // A polygon of 2,000 corners lies within r (1 − cos(π/2000)) = 6e-6 m of its circle of 5 m.
    const pond = region(regularPolygon(at(0, 0), 5, 2000));
    const tangentM = Math.sqrt(13 ** 2 - 5 ** 2); // 12, from 13 m off the middle of a circle of 5 m
    const arcRad = Math.PI - 2 * Math.acos(5 / 13); // what the tangents leave of the half turn
    expectNear(ways([pond], at(-13, 0)).lengthM(at(13, 0)), 2 * tangentM + 5 * arcRad, 1e-4, 'm');
  });

  test('keeps off the corners it goes round, which is an arc longer', () => {
    const r = 0.5;
    // From (−3, −r) along the south side, a quarter turn of radius r round (10, 0), and up the east side.
    const quarterM = (Math.PI / 2) * r;
    const lengthM = ways([region(rect(0, 0, 10, 40))], at(-3, -r), r).lengthM(at(10 + r, 4));
    expectNear(lengthM, 13 + quarterM + 4, 2e-3, 'm'); // the kernel’s arcs are within 1 mm of theirs
  });

  test('begins at the wall of a spigot drawn a hand inside it', () => {
    expectNear(ways([HOUSE], at(5, 0.1)).lengthM(at(9, -5)), Math.hypot(4, 5), 1e-8, 'm'); // from (5, 0)
  });

  test('is not there from deep inside the house, nor into a court', () => {
    const inside = ways([HOUSE], at(5, 2));
    expect(inside.stand).toBeNull();
    expect(inside.lengthM(at(20, 20))).toBe(Infinity);
    const court = region(rect(0, 0, 10, 8), rect(3, 3, 2, 2));
    expect(ways([court], at(-1, -1)).lengthM(at(4, 4))).toBe(Infinity);
    expect(ways([court], at(-1, -1)).wayTo(at(4, 4))).toBeUndefined();
  });

  test('is as long the other way round', () => {
    const barriers = [HOUSE, region(rect(14, -6, 3, 14))];
    const [a, b] = [at(4, -3), at(22, 3)];
    expectNear(ways(barriers, a).lengthM(b), ways(barriers, b).lengthM(a), 1e-9, 'm'); // one shortest way
  });
});
