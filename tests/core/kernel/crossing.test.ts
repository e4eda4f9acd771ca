import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findCrossing, someCrossing } from '../../../core/kernel/index.ts';
import type { Ring, YardPoint } from '../../../core/spaces.ts';
import { lShape, moved, points, rect } from '../../support/builders.ts';
import { randomComb, randomStar, seededRandom } from '../../support/randomYards.ts';

describe('a ring that is simple has no crossing', () => {
  test.each([
    ['a rectangle', rect(0, 0, 3, 2)],
    ['a rectangle the other way round', rect(0, 0, 3, 2).reverse()],
    ['an L', lShape(20, 10, 5, 4)],
    ['corners on a straight edge', points([0, 0], [1, 0], [2, 0], [3, 0], [3, 2], [0, 2])],
    ['a corner clicked twice', points([0, 0], [3, 0], [3, 0], [3, 2], [0, 2])],
    ['the first corner clicked again at the end', points([0, 0], [3, 0], [3, 2], [0, 2], [0, 0])],
    ['a needle 1e-9 m wide', points([0, 0], [100, 1e-9], [0, 2e-9])],
    ['a comb', randomComb(seededRandom(7), 9, 40, 20)],
  ])('%s', (_name, ring) => {
    expect(findCrossing(ring)).toBeUndefined();
  });

  test('at any turn and place', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e9 }),
        fc.integer({ min: 3, max: 80 }),
        fc.double({ min: -4, max: 4, noNaN: true }),
        (seed, corners, turnRad) => {
          const star = randomStar(seededRandom(seed), corners, { xM: 0, yM: 0 }, 30, 0.9);
          expect(findCrossing(moved(star, turnRad, 3000, -2000))).toBeUndefined();
        },
      ),
    );
  });
});

describe('a ring that is not simple says where', () => {
  test('a bow-tie crosses in its middle', () => {
    expect(findCrossing(points([0, 0], [2, 2], [2, 0], [0, 2]))).toEqual({ xM: 1, yM: 1 }); // diagonals of a square
  });

  test.each([
    ['a corner on another edge', points([0, 0], [4, 0], [4, 4], [2, 0], [0, 4]), { xM: 2, yM: 0 }],
    ['two corners at one place', points([0, 0], [2, 2], [4, 0], [4, 4], [2, 2], [0, 4]), { xM: 2, yM: 2 }],
  ])('%s', (_name, ring, place) => {
    expect(findCrossing(ring)).toEqual(place); // read off the corners
  });

  test('an edge that lies on another', () => {
    const place = findCrossing(points([0, 0], [6, 0], [6, 2], [4, 0], [2, 0], [0, 2]));
    expect(place?.yM).toBe(0); // the shared stretch is on y = 0
    expect(place && place.xM >= 2 && place.xM <= 4).toBe(true); // from x = 2 to x = 4
  });

  test('an edge that runs back over the one before', () => {
    const place = findCrossing(points([0, 0], [8, 0], [4, 0], [4, 4]));
    expect(place?.yM).toBe(0); // the doubled stretch is on y = 0
    expect(place && place.xM >= 4 && place.xM <= 8).toBe(true); // from x = 4 to x = 8
  });

  test('a crossing is found if and only if two edges apart from each other meet, by comparing all of them', () => {
    let crossed = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const random = seededRandom(seed);
      const corners = 4 + Math.floor(random() * 5);
      // Small whole numbers, so that corners fall on edges and on each other often and by-hand sides are exact.
      const ring = Array.from({ length: corners }, () => ({
        xM: Math.floor(random() * 6),
        yM: Math.floor(random() * 6),
      }));
      const expected = meetsByComparingAll(ring);
      expect(findCrossing(ring) !== undefined, `seed ${seed}: ${JSON.stringify(ring)}`).toBe(expected);
      if (expected) crossed++;
    }
    // Both kinds have to be there for the comparison to mean anything.
    expect(crossed).toBeGreaterThan(100);
    expect(crossed).toBeLessThan(395);
  });
});

test('ten thousand corners are looked through without comparing every pair', () => {
  const ring = randomStar(seededRandom(5), 10_000, { xM: 0, yM: 0 }, 100, 0.3);
  expect(findCrossing(ring)).toBeUndefined();
  const [a, b] = [ring[5000] as YardPoint, ring[5001] as YardPoint];
  ring.splice(5000, 2, b, a);
  expect(findCrossing(ring)).toBeDefined(); // two corners exchanged
});

/** Straight from the definition: whole-number cross products, every pair. */
function meetsByComparingAll(ring: Ring): boolean {
  const corners = ring.filter((p, i) => {
    const next = ring[(i + 1) % ring.length] as YardPoint;
    return p.xM !== next.xM || p.yM !== next.yM;
  });
  const n = corners.length;
  if (n < 3) return false;
  const at = (i: number) => corners[i % n] as YardPoint;
  const side = (a: YardPoint, b: YardPoint, c: YardPoint) =>
    Math.sign((b.xM - a.xM) * (c.yM - a.yM) - (b.yM - a.yM) * (c.xM - a.xM));
  const between = (a: YardPoint, b: YardPoint, c: YardPoint) =>
    Math.min(a.xM, b.xM) <= c.xM &&
    c.xM <= Math.max(a.xM, b.xM) &&
    Math.min(a.yM, b.yM) <= c.yM &&
    c.yM <= Math.max(a.yM, b.yM);
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const [a, b, c, d] = [at(i), at(i + 1), at(j), at(j + 1)];
      if (j === i + 1 || (i === 0 && j === n - 1)) {
        const [far, shared, next] = j === i + 1 ? [a, b, d] : [c, d, b];
        const back =
          (far.xM - shared.xM) * (next.xM - shared.xM) + (far.yM - shared.yM) * (next.yM - shared.yM);
        if (side(far, shared, next) === 0 && back > 0) return true;
        continue;
      }
      const apart = side(a, b, c) * side(a, b, d) === -1 && side(c, d, a) * side(c, d, b) === -1;
      const touching =
        (side(a, b, c) === 0 && between(a, b, c)) ||
        (side(a, b, d) === 0 && between(a, b, d)) ||
        (side(c, d, a) === 0 && between(c, d, a)) ||
        (side(c, d, b) === 0 && between(c, d, b));
      if (apart || touching) return true;
    }
  }
  return false;
}

describe('going through the crossings', () => {
  test('edges are told by the corner they begin at, also past a corner clicked twice', () => {
    const told: (readonly [number, number])[] = [];
    const ring = points([0, 0], [0, 0], [2, 2], [2, 0], [0, 2]);
    expect(
      someCrossing(ring, (edge, other) => {
        told.push([edge, other]);
        return false;
      }),
    ).toBe(false);
    expect(told).toEqual([[1, 3]]); // from the second (0, 0) and from (2, 0)
  });
});
