import { expect, test } from 'vitest';
import { areaStepM2 } from '../../../core/units/index.ts';
import { printedOverlaps, printedZones, resolveZones } from '../../../core/zones/index.ts';
import { groundOf, outline, rect, region } from '../../support/builders.ts';

test('what a zone loses to each of two others adds up to what its row shows', () => {
  // 10.4 m² to each, 20.8 together: in whole tenths 10.4 each; in feet 111.9 and 111.9, together 223.9.
  const zones = [
    outline('zone', 'west', rect(-10, 0, 12.6, 4)),
    outline('zone', 'east', rect(7.4, 0, 10, 4)),
    outline('zone', 'middle', rect(0, 0, 10, 4)),
  ];
  const resolved = resolveZones(groundOf(zones));
  if (!resolved.ok) throw new Error('refused');
  for (const units of ['us', 'metric'] as const) {
    const printed = printedZones(resolved.value, units);
    const steps = (areaM2: number | undefined) => Math.round((areaM2 ?? Number.NaN) / areaStepM2(units));
    const shown = printedOverlaps(resolved.value, printed, units).map(({ shownM2 }) => steps(shownM2));
    expect(shown.length).toBe(2);
    expect((shown[0] ?? 0) + (shown[1] ?? 0)).toBe(steps(printed[2]?.ownedByOtherM2)); // the middle's row
  }
});

test('overlaps that cannot make up the row are each rounded by themselves', () => {
  const resolved = resolveZones(groundOf([outline('zone', 'a', rect(0, 0, 10, 10))]));
  if (!resolved.ok) throw new Error('refused');
  const overlap = {
    ownerId: 'b',
    otherId: 'a',
    by: 'larger',
    areaM2: 4.26,
    regions: [region(rect(0, 0, 1, 1))],
  } as const;
  const [shown] = printedOverlaps({ overlaps: [overlap] }, printedZones(resolved.value, 'metric'), 'metric');
  expect(shown?.shownM2).toBeCloseTo(4.3, 9); // 4.26 to a tenth; the row says 0
});
