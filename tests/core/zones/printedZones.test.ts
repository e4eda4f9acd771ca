import fc from 'fast-check';
import { expect, test } from 'vitest';
import { areaFigure, areaStepM2, type UnitSystem } from '../../../core/units/index.ts';
import { LEVEL, spreadOf } from '../../support/builders.ts';
import { printedSum, printedZones, type ResolvedZone } from '../../../core/zones/index.ts';

const zone = (parts: readonly [number, number, number, number], sigmaM2: number | null): ResolvedZone => {
  const [treatedAreaM2, leftOutM2, cutOutAreaM2, ownedByOtherAreaM2] = parts;
  const turfAreaM2 = treatedAreaM2 + leftOutM2;
  return {
    zoneId: `z${treatedAreaM2}`,
    name: 'lawn',
    grossAreaM2: turfAreaM2 + cutOutAreaM2 + ownedByOtherAreaM2,
    cutOutAreaM2,
    ownedByOtherAreaM2,
    turfAreaM2,
    treatedAreaM2,
    sigmaM2,
    spread: spreadOf(`z${treatedAreaM2}`, sigmaM2),
    ...LEVEL,
    turf: [],
    treated: [],
  };
};

const shown = (areaM2: number, units: UnitSystem): number =>
  Number(areaFigure(areaM2, units).text.replaceAll(',', ''));

test('what is shown adds up across each zone and down each column, in either unit system', () => {
  const area = fc.double({ min: 0, max: 5000, noNaN: true });
  const parts = fc.tuple(area, area, area, area);
  fc.assert(
    fc.property(
      fc.array(parts, { maxLength: 12 }),
      fc.constantFrom('us' as const, 'metric' as const),
      (rows, units) => {
        const resolved = {
          zones: rows.map((row) => zone(row, null)),
          overlaps: [],
          strips: [],
          untreated: [],
          warnings: [],
        };
        const zones = printedZones(resolved, units);
        const all = printedSum(zones);
        for (const row of [...zones, all]) {
          expect(shown(row.treatedM2, units) + shown(row.leftOutM2, units)).toBeCloseTo(
            shown(row.turfM2, units),
            6,
          );
          expect(
            shown(row.turfM2, units) + shown(row.cutOutM2, units) + shown(row.ownedByOtherM2, units),
          ).toBeCloseTo(shown(row.grossM2, units), 6);
        }
        const down = zones.reduce((sum, row) => sum + shown(row.treatedM2, units), 0);
        expect(down).toBeCloseTo(shown(all.treatedM2, units), 6);
        const exact = (areaOf: (row: ResolvedZone) => number): number =>
          resolved.zones.reduce((sum, row) => sum + areaOf(row), 0);
        const half = areaStepM2(units) * 0.500001;
        expect(Math.abs(all.treatedM2 - exact((row) => row.treatedAreaM2))).toBeLessThan(half);
        expect(Math.abs(all.grossM2 - exact((row) => row.grossAreaM2))).toBeLessThan(half);
        zones.forEach((row, i) => {
          const exact = (resolved.zones[i] as ResolvedZone).treatedAreaM2;
          expect(Math.abs(row.treatedM2 - exact)).toBeLessThan(areaStepM2(units) * 1.000001);
        });
      },
    ),
  );
});

test('errors of zones combine as the root of the sum of squares, and one not stated leaves the sum without', () => {
  const both = {
    zones: [zone([100, 0, 0, 0], 3), zone([200, 0, 0, 0], 4)],
    overlaps: [],
    strips: [],
    untreated: [],
    warnings: [],
  };
  expect(printedSum(printedZones(both, 'metric')).sigmaM2).toBe(5); // 3-4-5 triangle
  const one = {
    zones: [zone([100, 0, 0, 0], 3), zone([200, 0, 0, 0], null)],
    overlaps: [],
    strips: [],
    untreated: [],
    warnings: [],
  };
  expect(printedSum(printedZones(one, 'metric')).sigmaM2).toBeNull();
});

test('level ground shows one area twice; a slope’s surface is its shown area times the factor', () => {
  const slopes = { ...zone([100.04, 0, 0, 0], null), zoneId: 'bank', surfaceFactor: 1.25 };
  const level = zone([50, 0, 0, 0], null);
  const rowsOf = (amountFactor: number) =>
    printedZones(
      { zones: [level, { ...slopes, amountFactor }], overlaps: [], strips: [], untreated: [], warnings: [] },
      'metric',
    );
  const [flat, bank] = rowsOf(1);
  expect(flat?.surfaceM2).toBe(flat?.treatedM2); // level
  expect(bank?.treatedM2).toBeCloseTo(100, 9); // 100.04 to a tenth
  expect(bank?.surfaceM2).toBeCloseTo(125, 9); // 100.0 × 1.25
  expect(bank?.amountsM2).toBe(bank?.treatedM2); // amounts by the map
  expect(rowsOf(1.25)[1]?.amountsM2).toBe(bank?.surfaceM2); // amounts by the surface
  expect(printedSum(rowsOf(1)).surfaceM2).toBeCloseTo(175, 9); // 50 + 125
});

test('the ± of what amounts are from grows with the surface', () => {
  const bank = { ...zone([100, 0, 0, 0], 2), surfaceFactor: 1.25, amountFactor: 1.25 };
  const zones = printedZones(
    { zones: [bank, zone([50, 0, 0, 0], 1)], overlaps: [], strips: [], untreated: [], warnings: [] },
    'metric',
  );
  expect(zones[0]?.sigmaM2).toBe(2); // of the map's area, as stated
  expect(zones[0]?.amountsSigmaM2).toBe(2.5); // 2 × 1.25
  expect(printedSum(zones).amountsSigmaM2).toBeCloseTo(Math.hypot(2.5, 1), 12); // independent errors add as squares
  expect(
    printedZones(
      { zones: [zone([9, 0, 0, 0], null)], overlaps: [], strips: [], untreated: [], warnings: [] },
      'us',
    )[0]?.amountsSigmaM2,
  ).toBeNull();
});
