import { describe, expect, test } from 'vitest';
import type { Elevation, Outline, Slope } from '../../../core/yard.ts';
import { type Ground, type ResolvedYard, resolveZones } from '../../../core/zones/index.ts';
import { zoneSlope } from '../../../core/zones/zoneSlope.ts';
import { groundOf, outline, rect, region } from '../../support/builders.ts';
import { elevationOf } from '../../support/elevations.ts';
import { expectNear } from '../../support/expectNear.ts';

/** 30 m square from -5, rising 0.75 m a metre to the east. */
const HILL = elevationOf(-5, -5, 31, 31, 1, (xM) => 100 + 0.75 * xM);

function sloping(slope: Slope | null, zone = outline('zone', 'bank', rect(0, 0, 20, 10))): Outline {
  return { ...zone, slope };
}

function resolved(
  outlines: readonly Outline[],
  elevations: readonly Elevation[] = [],
  amountsBy: 'plan' | 'surface' = 'plan',
): ResolvedYard {
  const level = groundOf(outlines);
  const ground: Ground = { ...level, elevations, details: { ...level.details, amountsBy } };
  const made = resolveZones(ground);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}

describe('the slope of a zone', () => {
  test('not stated leaves the surface what the map shows', () => {
    const [zone] = resolved([sloping(null)]).zones;
    expect(zone).toMatchObject({ slope: null, surfaceFactor: 1, amountFactor: 1 }); // level
  });

  test('of one grade makes the treated ground larger and no other figure', () => {
    const bed = outline('bed', 'bed', rect(2, 2, 5, 4)); // 20 m²
    const [zone] = resolved([sloping({ kind: 'grade', grade: 0.75 }), bed]).zones;
    expect(zone?.treatedAreaM2).toBeCloseTo(180, 6); // 20 × 10 - 20, as on the map
    expect(zone?.surfaceFactor).toBe(1.25); // √(1 + 0.75²)
    expect(zone?.slope?.surfaceM2).toBeCloseTo(225, 6); // 180 × 1.25
  });

  test('from an elevation grid is measured on the treated ground alone', () => {
    const wall = (xM: number): number => 100 + (xM <= 10 ? 0 : 3 * (xM - 10));
    const cliff = elevationOf(-5, -5, 31, 31, 1, wall);
    const zone = sloping({ kind: 'elevation', elevationId: 'heights' });
    const eastBed = outline('bed', 'east half', rect(10, 0, 10, 10));
    const [whole] = resolved([zone], [cliff]).zones;
    const [flat] = resolved([zone, eastBed], [cliff]).zones;
    expectNear(whole?.surfaceFactor ?? Number.NaN, (1 + Math.sqrt(10)) / 2, 1e-9, ''); // half level, half √(1 + 3²)
    expectNear(flat?.surfaceFactor ?? Number.NaN, 1, 1e-9, ''); // the cliff is cut out
  });

  test('feeds the amounts only where the yard says so', () => {
    const zone = sloping({ kind: 'grade', grade: 0.75 });
    expect(resolved([zone], [], 'plan').zones[0]?.amountFactor).toBe(1); // the map's area
    expect(resolved([zone], [], 'surface').zones[0]?.amountFactor).toBe(1.25); // √(1 + 0.75²)
  });

  test('of a zone covered whole is of nothing', () => {
    const bed = outline('bed', 'all', rect(-1, -1, 22, 12));
    const { zones, warnings } = resolved(
      [sloping({ kind: 'elevation', elevationId: 'heights' }), bed],
      [HILL],
    );
    expect(zones[0]?.surfaceFactor).toBe(1); // nothing to be larger
    expect(warnings.map(({ kind }) => kind)).toEqual(['shape/covered-whole']);
  });

  test('by a grid that is gone counts as level and is told', () => {
    const { zones, warnings } = resolved([sloping({ kind: 'elevation', elevationId: 'gone' })]);
    expect(zones[0]).toMatchObject({ surfaceFactor: 1, slope: { coveredM2: 0, steepM2: 0 } }); // level
    expect(warnings).toMatchObject([{ kind: 'shape/heights-missing', facts: { missingM2: 200 } }]); // 20 × 10
  });

  test('by a grid that ends on it is told by how much', () => {
    const half = elevationOf(-5, -5, 16, 31, 1, (xM) => 100 + 0.1 * xM); // to x = 10
    const { warnings } = resolved([sloping({ kind: 'elevation', elevationId: 'heights' })], [half]);
    expect(warnings.map(({ kind }) => kind)).toEqual(['shape/heights-missing']);
    const [told] = warnings;
    if (told?.kind !== 'shape/heights-missing') throw new Error('not told');
    expectNear(told.facts.missingM2, 100, 1e-6, 'm²'); // 10 × 10 beyond it
  });

  test('beyond one in three is warned of, at one in three not', () => {
    const kinds = (grade: number): string[] =>
      resolved([sloping({ kind: 'grade', grade })]).warnings.map(({ kind }) => kind);
    expect(kinds(1 / 3)).toEqual([]);
    expect(kinds(0.34)).toEqual(['shape/steep']);
    const byGrid = resolved([sloping({ kind: 'elevation', elevationId: 'heights' })], [HILL]).warnings;
    expect(byGrid).toMatchObject([{ kind: 'shape/steep', where: { outlineId: 'bank' } }]); // 75 %
  });

  test('is not measured anew while neither ground nor grid changes', () => {
    const treated = [region(rect(0, 0, 20, 10))];
    const zone = sloping({ kind: 'elevation', elevationId: 'heights' });
    const first = zoneSlope(zone, treated, [HILL], 'plan').slope;
    expect(zoneSlope({ ...zone, name: 'other' }, treated, [HILL], 'surface').slope).toBe(first); // the same answer
    expect(zoneSlope(zone, treated, [{ ...HILL }], 'plan').slope).not.toBe(first); // another grid
    expect(zoneSlope(zone, [...treated], [HILL], 'plan').slope).not.toBe(first); // another ground
  });

  test('of a zone is kept while a corner of another is dragged', () => {
    const zone = sloping({ kind: 'elevation', elevationId: 'heights' });
    const other = (widthM: number) => outline('zone', 'other', rect(40, 0, widthM, 10));
    const before = resolved([zone, other(5)], [HILL]).zones[0]?.slope;
    expect(resolved([zone, other(6)], [HILL]).zones[0]?.slope).toBe(before); // the same object
  });
});
