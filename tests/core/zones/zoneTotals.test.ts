import { expect, test } from 'vitest';
import { type ResolvedZone, zoneTotals } from '../../../core/zones/index.ts';

const zone = (treatedAreaM2: number, sigmaM2: number | null): ResolvedZone => ({
  zoneId: `z${treatedAreaM2}`,
  name: 'lawn',
  grossAreaM2: treatedAreaM2 + 30,
  cutOutAreaM2: 20,
  ownedByOtherAreaM2: 5,
  turfAreaM2: treatedAreaM2 + 5,
  treatedAreaM2,
  sigmaM2,
  turf: [],
  treated: [],
});

test('the zones of a yard add up, and their errors as the root of the sum of squares', () => {
  const totals = zoneTotals({ zones: [zone(100, 3), zone(200, 4)], overlaps: [], warnings: [] });
  expect(totals).toEqual({
    grossAreaM2: 360, // 130 + 230
    cutOutAreaM2: 40, // 20 + 20
    ownedByOtherAreaM2: 10, // 5 + 5
    turfAreaM2: 310, // 105 + 205
    treatedAreaM2: 300, // 100 + 200
    sigmaM2: 5, // 3-4-5 triangle
  });
});

test('a zone whose error is not stated leaves the total without one', () => {
  expect(
    zoneTotals({ zones: [zone(100, 3), zone(200, null)], overlaps: [], warnings: [] }).sigmaM2,
  ).toBeNull();
});
