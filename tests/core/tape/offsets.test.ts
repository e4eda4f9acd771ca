import { describe, expect, test } from 'vitest';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { offsetsFromBaseline } from '../../../core/tape/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { AWAY, EAST, kindsOf, given } from '../../support/taped.ts';

describe('offsets from a baseline', () => {
  test('nine at 10 m hold the 460.75 m² of the trapezoidal rule', () => {
    const offsetsM = [3.15, 4.3, 8.2, 5.6, 6.85, 7.6, 4.2, 5.6, 4.3];
    // surveying lecture notes, softecksblog.in, Surveying 13: trapezoidal rule
    expectNear(signedAreaM2(given(offsetsFromBaseline(offsetsM, [10], AWAY))), 460.75, 1e-8, 'm²');
  });

  test('that are nothing at both ends hold 188.0 m²', () => {
    const ring = given(offsetsFromBaseline([0, 2.5, 3.5, 5, 4.6, 3.2, 0], [10], AWAY));
    // exercise on askfilo.com; 10 × (2.5 + 3.5 + 5 + 4.6 + 3.2), worked by hand
    expectNear(signedAreaM2(ring), 188, 1e-8, 'm²');
    expect(ring).toHaveLength(7); // two ends of the baseline and five offsets, none twice
  });

  test('may stand at unequal spacings', () => {
    const ring = given(offsetsFromBaseline([2, 4, 1], [3, 5], EAST));
    expectNear(signedAreaM2(ring), 21.5, 1e-12, 'm²'); // by hand: 3 × (2+4)/2 + 5 × (4+1)/2
  });

  test('are refused when too few, behind the baseline, or not as many as their spacings', () => {
    expect(kindsOf(offsetsFromBaseline([1], [10], EAST))).toEqual(['value/too-few']);
    expect(kindsOf(offsetsFromBaseline([1, -1], [10], EAST))).toEqual(['value/behind-baseline']);
    expect(kindsOf(offsetsFromBaseline([1, 2, 3, 4], [10, 10], EAST))).toEqual(['value/counts-differ']);
    expect(kindsOf(offsetsFromBaseline([1, 2, 3], [10, 0], EAST))).toEqual(['value/not-positive']);
    expect(kindsOf(offsetsFromBaseline([0, 0], [10], EAST))).toEqual(['shape/too-few-points']);
  });
});
