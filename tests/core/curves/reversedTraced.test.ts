import { describe, expect, test } from 'vitest';
import { reversedTraced, tracedRing } from '../../../core/curves/index.ts';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import type { Traced } from '../../../core/yard.ts';

const TRACED: Traced = {
  kind: 'corners',
  corners: [
    { xM: 0, yM: 0, run: { kind: 'arc', via: { xM: 5, yM: -3 } } },
    { xM: 10, yM: 0, keepOffM: 1 },
    { xM: 10, yM: 6, run: { kind: 'smooth' } },
    { xM: 4, yM: 8, run: { kind: 'smooth' } },
  ],
};

describe('an edge traced the other way', () => {
  test('what is said of an edge stays with it', () => {
    expect(reversedTraced(TRACED)).toEqual({
      kind: 'corners',
      corners: [
        { xM: 0, yM: 0, run: { kind: 'smooth' } },
        { xM: 4, yM: 8, run: { kind: 'smooth' } },
        { xM: 10, yM: 6, keepOffM: 1 },
        { xM: 10, yM: 0, run: { kind: 'arc', via: { xM: 5, yM: -3 } } },
      ], // each edge written at its other end
    });
  });

  test('holds the same ground, run round the other way', () => {
    const areaM2 = signedAreaM2(tracedRing(TRACED));
    expect(signedAreaM2(tracedRing(reversedTraced(TRACED)))).toBeCloseTo(-areaM2, 9);
  });

  test('twice is what it was', () => {
    expect(reversedTraced(reversedTraced(TRACED))).toEqual(TRACED);
  });

  test('a circle has no way round', () => {
    const circle: Traced = { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 2 };
    expect(reversedTraced(circle)).toBe(circle);
  });
});
