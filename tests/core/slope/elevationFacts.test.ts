import { expect, test } from 'vitest';
import { elevationFacts, readAnew } from '../../../core/slope/index.ts';
import { elevationOf } from '../../support/elevations.ts';

const HILL = elevationOf(0, 0, 4, 3, 2, (xM, yM) => (xM === 0 && yM === 0 ? null : 10 + xM));

test('a grid is known by its spacing, its heights and its gaps', () => {
  expect(elevationFacts(HILL)).toEqual({ spacingM: 2, lowestM: 10, highestM: 16, missing: 1 }); // as built: 10 + 0 … 10 + 6
  const empty = elevationOf(0, 0, 2, 2, 1, () => null);
  expect(elevationFacts(empty)).toEqual({ spacingM: 1, lowestM: 0, highestM: 0, missing: 4 }); // nothing in it
});

test('heights in the other unit are read anew, and back', () => {
  const feet = readAnew(HILL, 'feet');
  expect(elevationFacts(feet).highestM).toBe(4.877); // 16 × 0.3048 to the millimetre
  expect(feet.heightsMm.filter((height) => height === null)).toHaveLength(1); // gaps stay
  const back = readAnew(feet, 'metres');
  back.heightsMm.forEach((height, node) => {
    // Half a millimetre each way, times 3.28.
    expect(Math.abs((height ?? 0) - (HILL.heightsMm[node] ?? 0))).toBeLessThanOrEqual(3);
  });
});
