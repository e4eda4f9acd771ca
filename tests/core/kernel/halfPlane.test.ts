import { describe, expect, test } from 'vitest';
import { clipHalfPlane, regionAreaM2, regionsAreaM2, signedAreaM2 } from '../../../core/kernel/index.ts';
import type { Ring, YardPoint } from '../../../core/spaces.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomStar, seededRandom } from '../../support/randomYards.ts';

const lawn = region(rect(0, 0, 10, 10), rect(4, 4, 2, 2));

describe('the part on one side of a straight line', () => {
  test('is a strip of a rectangle', () => {
    expectNear(regionsAreaM2(clipHalfPlane(lawn, { x: 1, y: 0 }, 3)), 30, 1e-9, 'm²'); // 3 * 10
    expectNear(regionsAreaM2(clipHalfPlane(lawn, { x: -1, y: 0 }, -7)), 30, 1e-9, 'm²'); // x >= 7: 3 * 10
  });

  test('leaves out the part of a bed it cuts', () => {
    expectNear(regionsAreaM2(clipHalfPlane(lawn, { x: 0, y: 1 }, 5)), 48, 1e-9, 'm²'); // 5 * 10 - 2 * 1
  });

  test('is everything or nothing for a line beyond', () => {
    expect(clipHalfPlane(lawn, { x: 1, y: 0 }, 100)).toEqual([lawn]);
    expect(clipHalfPlane(lawn, { x: 1, y: 0 }, -100)).toEqual([]);
  });

  test('has the area that cutting every edge in turn gives', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const random = seededRandom(seed);
      const star = randomStar(random, 30, { xM: 0, yM: 0 }, 25, 0.7);
      const rad = between(random, 0, 2 * Math.PI);
      const n = { x: Math.cos(rad), y: Math.sin(rad) };
      const offsetM = between(random, -20, 20);
      const exactM2 = signedAreaM2(cutEdgeByEdge(star, n, offsetM));
      // No corner moves by more than a grid step, 1e-6 m; edges add up to at most 30 * 50 m, and roundings cancel.
      expectNear(regionsAreaM2(clipHalfPlane(region(star), n, offsetM)), exactM2, 1e-4, `m² (seed ${seed})`);
    }
  });

  test('and the part on the other side make up the whole', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const random = seededRandom(seed);
      const star = region(randomStar(random, 30, { xM: 0, yM: 0 }, 25, 0.7));
      const rad = between(random, 0, 2 * Math.PI);
      const n = { x: Math.cos(rad), y: Math.sin(rad) };
      const offsetM = between(random, -20, 20);
      const near = regionsAreaM2(clipHalfPlane(star, n, offsetM));
      const far = regionsAreaM2(clipHalfPlane(star, { x: -n.x, y: -n.y }, -offsetM));
      // Corners made by the cut move by up to the grid step along a perimeter of at most 30 * 50 m.
      expectNear(near + far, regionAreaM2(star), 1500 * 1e-6, `m² (seed ${seed})`);
    }
  });
});

/**
 * Sutherland & Hodgman 1974, one side. Parts stay joined by stretches along the line that run both ways, which add
 * nothing to the area.
 */
function cutEdgeByEdge(ring: Ring, n: { x: number; y: number }, offsetM: number): Ring {
  const beyond = (p: YardPoint) => n.x * p.xM + n.y * p.yM - offsetM;
  return ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length] as YardPoint;
    const [a, b] = [beyond(from), beyond(to)];
    const kept = a <= 0 ? [from] : [];
    if (a <= 0 === b <= 0) return kept;
    const t = a / (a - b);
    return [...kept, { xM: from.xM + t * (to.xM - from.xM), yM: from.yM + t * (to.yM - from.yM) }];
  });
}
