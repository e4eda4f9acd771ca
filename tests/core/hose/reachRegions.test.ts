import { describe, expect, test } from 'vitest';
import { clearGround } from '../../../core/hose/clearGround.ts';
import { reachRegions } from '../../../core/hose/index.ts';
import { hoseWays } from '../../../core/hose/hoseWays.ts';
import { regionContains, regionsAreaM2 } from '../../../core/kernel/index.ts';
import type { Region } from '../../../core/spaces.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomStar, seededRandom } from '../../support/randomYards.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const spigot = (xM: number, yM: number) => ({ id: 's', name: 's', at: at(xM, yM) });
const ground = (barriers: readonly Region[], lengthM: number) => {
  return { spigots: [], lengthM, clearanceM: 0, barriers, obstacles: [] };
};

describe('the ground a hose reaches', () => {
  test('in the open is a disc', () => {
    const reach = reachRegions(ground([], 10), spigot(3, 4));
    expectNear(regionsAreaM2(reach), Math.PI * 100, 1e-3, 'm²'); // π r²
  });

  test('from the middle of a long wall is half a disc', () => {
    const reach = reachRegions(ground([region(rect(-50, 0, 100, 5))], 10), spigot(0, 0));
    expectNear(regionsAreaM2(reach), (Math.PI * 100) / 2, 1e-3, 'm²'); // π r² / 2
  });

  test('round the end of a wall goes on with what is left of the hose', () => {
    // A wall 4 m thick from x = 0 east; the spigot 3 m south of its south face, 4 m east of its end: 5 m to the corner.
    const wall = region(rect(0, 0, 100, 4));
    const reach = reachRegions(ground([wall], 12), spigot(4, -3));
    const has = (xM: number, yM: number) => reach.some((part) => regionContains(part, at(xM, yM)));
    expect(has(-6.9, 0)).toBe(true); // by the straight line √(10.9² + 3²) = 11.3
    expect(has(2.9, 4.01)).toBe(true); // 5 to (0, 0), 4 to (0, 4), 2.9 along the north face: 11.9
    expect(has(3.1, 4.01)).toBe(false); // 12.1
    expect(has(0, 3.9)).toBe(true);
    expect(has(50, 2)).toBe(false);
  });

  test('from a spigot that is shut in is none', () => {
    expect(reachRegions(ground([region(rect(0, 0, 10, 10))], 12), spigot(5, 5))).toEqual([]);
  });
});

test('on random yards a place is in the reach just when its way is no longer than the hose', () => {
  let [within, beyond] = [0, 0];
  for (let seed = 1; seed <= 30; seed++) {
    const random = seededRandom(seed);
    // One in each of four quarters, so that they lie apart.
    const barriers = [at(-8, -8), at(8, -8), at(8, 8), at(-8, 8)].map((middle) =>
      region(randomStar(random, 3 + Math.floor(random() * 7), middle, between(random, 2, 7), random() * 0.8)),
    );
    const from = spigot(between(random, -0.9, 0.9), between(random, -0.9, 0.9));
    const lengthM = between(random, 8, 24);
    const reach = reachRegions(ground(barriers, lengthM), from);
    const ways = hoseWays(clearGround(ground(barriers, lengthM)), from);
    for (let i = 0; i < 200; i++) {
      const place = at(between(random, -20, 20), between(random, -20, 20));
      const neededM = ways.lengthM(place);
      // Within 2 mm of the limit the drawn edge may lie on either side.
      if (neededM === Infinity || Math.abs(neededM - lengthM) < 0.003) continue;
      const isIn = reach.some((part) => regionContains(part, place));
      expect(isIn, `yard ${seed}, ${place.xM} ${place.yM}, ${neededM} of ${lengthM}`).toBe(neededM < lengthM);
      if (isIn) within += 1;
      else beyond += 1;
    }
  }
  expect(Math.min(within, beyond)).toBeGreaterThan(500); // of some 5,000 places
});
