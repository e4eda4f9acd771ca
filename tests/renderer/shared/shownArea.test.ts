import { expect, test } from 'vitest';
import { SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import type { ResolvedZone } from '../../../core/zones/index.ts';
import { LEVEL, spreadOf } from '../../support/builders.ts';
import { shownTreatedM2 } from '../../../renderer/shared/shownArea.ts';

const zone = (zoneId: string, treatedFt2: number): ResolvedZone => {
  const areaM2 = treatedFt2 * SQUARE_FOOT_M2;
  return {
    zoneId,
    name: zoneId,
    grossAreaM2: areaM2,
    cutOutAreaM2: 0,
    ownedByOtherAreaM2: 0,
    turfAreaM2: areaM2,
    treatedAreaM2: areaM2,
    sigmaM2: null,
    spread: spreadOf(zoneId, null),
    ...LEVEL,
    turf: [],
    treated: [],
  };
};

test('a zone shows the area its row in the schedule shows, not its own nearest rounding', () => {
  // 10.4 + 10.4 + 10.4 ft² are 31.2, shown as 31: one of the three shows 11
  const resolved = {
    zones: ['a', 'b', 'c'].map((id) => zone(id, 10.4)),
    overlaps: [],
    strips: [],
    untreated: [],
    warnings: [],
  };
  const shown = ['a', 'b', 'c'].map((id) => (shownTreatedM2(resolved, 'us', id) ?? 0) / SQUARE_FOOT_M2);
  expect(shown.map(Math.round)).toEqual([11, 10, 10]);
  expect(shownTreatedM2(resolved, 'us', 'bed')).toBeUndefined();
});
