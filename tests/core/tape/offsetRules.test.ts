import { describe, expect, test } from 'vitest';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { offsetAreas, offsetsFromBaseline } from '../../../core/tape/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { AWAY, given } from '../../support/taped.ts';

/** Nine offsets at 10 m: surveying lecture notes, softecksblog.in, Surveying 13. */
const NINE = [3.15, 4.3, 8.2, 5.6, 6.85, 7.6, 4.2, 5.6, 4.3];
/** Seven offsets at 10 m, nothing at both ends: exercise on askfilo.com. */
const SEVEN = [0, 2.5, 3.5, 5, 4.6, 3.2, 0];

function simpson(offsetsM: readonly number[], spacingsM: readonly number[]): number {
  return offsetAreas(offsetsM, spacingsM).simpsonAreaM2 ?? Number.NaN;
}

describe('the area between a baseline and an edge', () => {
  test('by the trapezoidal rule is what is drawn', () => {
    expectNear(offsetAreas(NINE, [10]).trapezoidAreaM2, 460.75, 1e-9, 'm²'); // the lecture notes
    expectNear(offsetAreas(SEVEN, [10]).trapezoidAreaM2, 188, 1e-9, 'm²'); // the exercise, computed
    const ring = given(offsetsFromBaseline([2, 4, 1, 3], [3, 5, 2], AWAY));
    expectNear(offsetAreas([2, 4, 1, 3], [3, 5, 2]).trapezoidAreaM2, signedAreaM2(ring), 1e-8, 'm²'); // the polygon
  });

  test('by Simpson’s rule is 461.167 m² and 196.667 m² of the same offsets', () => {
    expectNear(simpson(NINE, [10]), 461.167, 0.0005, 'm²'); // the lecture notes
    expectNear(simpson(SEVEN, [10]), 196.667, 0.0005, 'm²'); // the exercise, computed
  });

  test('by Simpson’s rule takes the last of an odd number of intervals as a trapezoid', () => {
    // rule stated on askfilo.com; 461.1667 − (10/3)(4.2 + 4 × 5.6 + 4.3) + 10 (4.2 + 5.6) / 2, by hand
    expectNear(simpson(NINE.slice(0, 8), [10]), 461.1666667 - 103 + 49, 1e-6, 'm²');
  });

  test('by Simpson’s rule is exact under a parabola', () => {
    const offsetsM = [0, 1, 2, 3, 4].map((i) => i * (4 - i));
    expectNear(simpson(offsetsM, [1]), 32 / 3, 1e-12, 'm²'); // closed form: ∫ x(4 − x) from 0 to 4 = 64/6
  });

  test('has no Simpson’s rule at unequal spacings or with two offsets', () => {
    expect(offsetAreas([2, 4, 1], [3, 5]).simpsonAreaM2).toBeNull();
    expect(offsetAreas([2, 4], [3]).simpsonAreaM2).toBeNull();
  });
});
