import { describe, expect, test } from 'vitest';
import { regionAreaM2, regionContains } from '../../../core/kernel/index.ts';
import { splitAlong } from '../../../core/sections/splitAlong.ts';
import { lShape, points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

describe('ground parted along a line', () => {
  const ground = region(rect(0, 0, 10, 4));

  test('has on its left what lies to the left of the way along it', () => {
    const sides = splitAlong(ground, { from: { xM: 3, yM: 0 }, to: { xM: 3, yM: 4 } });
    // Going north at 3 m: west is on the left, 3 × 4 = 12 m², and 7 × 4 = 28 m² on the right.
    expectNear(sides ? regionAreaM2(sides.left) : Number.NaN, 12, 1e-9, 'm²');
    expectNear(sides ? regionAreaM2(sides.right) : Number.NaN, 28, 1e-9, 'm²');
    expect(sides && regionContains(sides.left, { xM: 1, yM: 2 })).toBe(true);
  });

  test('turns its sides when the line is walked the other way', () => {
    const sides = splitAlong(ground, { from: { xM: 3, yM: 4 }, to: { xM: 3, yM: 0 } });
    expectNear(sides ? regionAreaM2(sides.left) : Number.NaN, 28, 1e-9, 'm²'); // 7 × 4 by hand
  });

  test('takes a line that stops short of the edge on to it', () => {
    const sides = splitAlong(ground, { from: { xM: 3, yM: 0.3 }, to: { xM: 3, yM: 4.2 } });
    expectNear(sides ? regionAreaM2(sides.left) : Number.NaN, 12, 1e-9, 'm²'); // 3 × 4 by hand
  });

  test('crosses a bed on the way', () => {
    const bedded = region(rect(0, 0, 10, 4), rect(2, 1, 2, 2));
    const sides = splitAlong(bedded, { from: { xM: 3, yM: 0 }, to: { xM: 3, yM: 4 } });
    expectNear(sides ? regionAreaM2(sides.left) : Number.NaN, 10, 1e-9, 'm²'); // 3 × 4 − 1 × 2 by hand
    expectNear(sides ? regionAreaM2(sides.right) : Number.NaN, 26, 1e-9, 'm²'); // 7 × 4 − 1 × 2 by hand
  });

  test('is not parted by a line to a bed only, along an edge, beside it, or of no length', () => {
    const bedded = region(rect(0, 0, 10, 4), rect(2, 1, 2, 2));
    expect(splitAlong(bedded, { from: { xM: 3, yM: 0 }, to: { xM: 3, yM: 1 } })).toBeUndefined();
    expect(splitAlong(ground, { from: { xM: 0, yM: 0 }, to: { xM: 10, yM: 0 } })).toBeUndefined();
    expect(splitAlong(ground, { from: { xM: 12, yM: 0 }, to: { xM: 12, yM: 4 } })).toBeUndefined();
    expect(splitAlong(ground, { from: { xM: 3, yM: 0 }, to: { xM: 3, yM: 0 } })).toBeUndefined();
  });

  test('across one arm of an L leaves the other alone', () => {
    const ell = region(lShape(10, 10, 6, 6));
    // The arm north is 4 m wide; cut at 7 m: 3 × 4 = 12 m² to the north, on the left of the way west to … east is south.
    const sides = splitAlong(ell, { from: { xM: 0, yM: 7 }, to: { xM: 4, yM: 7 } });
    expectNear(sides ? regionAreaM2(sides.left) : Number.NaN, 12, 1e-9, 'm²');
    expectNear(sides ? regionAreaM2(sides.right) : Number.NaN, 52, 1e-9, 'm²'); // 10 × 4 + 4 × 3 by hand
  });

  test('of a U is parted in one arm only, where the line stays in it', () => {
    const u = region(points([0, 0], [10, 0], [10, 8], [7, 8], [7, 3], [3, 3], [3, 8], [0, 8]));
    const sides = splitAlong(u, { from: { xM: 0, yM: 5 }, to: { xM: 3, yM: 5 } });
    expectNear(sides ? regionAreaM2(sides.left) : Number.NaN, 9, 1e-9, 'm²'); // 3 × 3 by hand
    // Across both arms three parts would be left.
    expect(splitAlong(u, { from: { xM: 0, yM: 5 }, to: { xM: 10, yM: 5 } })).toBeUndefined();
  });
});
