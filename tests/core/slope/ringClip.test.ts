import { describe, expect, test } from 'vitest';
import { clipRings, flatAreaM2 } from '../../../core/slope/ringClip.ts';
import { randomStar, seededRandom } from '../../support/randomYards.ts';

const SQUARE = [0, 0, 2, 0, 2, 2, 0, 2];
const UP_AT_HALF = { x: 0.5, y: 0, dx: 0, dy: 1 };

describe('clipping rings by a line', () => {
  test('keeps what is left of it, or right of it', () => {
    expect(flatAreaM2(clipRings([SQUARE], UP_AT_HALF, 1))).toBe(1); // 0.5 × 2
    expect(flatAreaM2(clipRings([SQUARE], UP_AT_HALF, -1))).toBe(3); // 1.5 × 2
  });

  test('a hole takes away on its own side', () => {
    const hole = [1, 0.5, 1, 1.5, 1.5, 1.5, 1.5, 0.5]; // clockwise, 0.5 m²
    expect(flatAreaM2([SQUARE, hole])).toBe(3.5); // 4 - 0.5
    expect(flatAreaM2(clipRings([SQUARE, hole], UP_AT_HALF, 1))).toBe(1); // the hole is east of the line
  });

  test('a ring beyond the line leaves nothing, one that only touches it neither', () => {
    expect(clipRings([SQUARE], { x: -1, y: 0, dx: 0, dy: 1 }, 1)).toEqual([]);
    expect(clipRings([[0, 0, 1, -1, 1, 1]], { x: 0, y: 0, dx: 0, dy: 1 }, 1)).toEqual([]);
  });

  test('both sides make up the whole, whatever the ring and the line', () => {
    const random = seededRandom(3);
    for (let i = 0; i < 200; i++) {
      const ring = randomStar(random, 3 + (i % 40), { xM: 5e3, yM: -2e3 }, 20, 0.9).flatMap(({ xM, yM }) => [
        xM,
        yM,
      ]);
      const angle = 2 * Math.PI * random();
      const line = { x: 5e3 + 20 * random(), y: -2e3, dx: Math.cos(angle), dy: Math.sin(angle) };
      const sides = flatAreaM2(clipRings([ring], line, 1)) + flatAreaM2(clipRings([ring], line, -1));
      expect(Math.abs(sides - flatAreaM2([ring]))).toBeLessThan(1e-9); // additivity of area, to the rounding of 5 km coordinates
    }
  });
});
