import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Parcel, shareLoads } from '../../../core/plan/shareLoads.ts';

function parcels(...said: readonly (readonly [areaM2: number, xM: number])[]): Parcel[] {
  return said.map(([areaM2, xM], turn) => ({ id: `${turn}`, areaM2, at: { xM, yM: 0 }, turn }));
}

function idsOf(loads: readonly (readonly Parcel[])[]): string[] {
  return loads
    .map((load) =>
      load
        .map(({ id }) => id)
        .sort()
        .join('+'),
    )
    .sort();
}

/** The fewest loads by trying every way to put parcels together: another method, for a handful. */
function fewestByTrying(areasM2: readonly number[], mostM2: number): number {
  const place = (left: readonly number[], rooms: readonly number[]): number => {
    const [first, ...others] = left;
    if (first === undefined) return rooms.length;
    const into = rooms.map((roomM2, i) =>
      roomM2 >= first ? place(others, rooms.with(i, roomM2 - first)) : Infinity,
    );
    return Math.min(place(others, [...rooms, mostM2 - first]), ...into);
  };
  return place(areasM2, []);
}

describe('sections share a load', () => {
  test('when that saves one, those that lie near each other', () => {
    const loads = shareLoads(parcels([60, 0], [60, 100], [40, 90], [40, 10]), 'even', 100);
    expect(idsOf(loads)).toEqual(['0+3', '1+2']); // 200 m² in two; 10 m apart each rather than 90
  });

  test('and no more of them than saves one', () => {
    // 160 m² in two loads: one pair is enough, so the two that lie nearest.
    expect(idsOf(shareLoads(parcels([50, 0], [50, 30], [50, 200]), 'even', 100))).toEqual(['0+1', '2']);
    expect(idsOf(shareLoads(parcels([60, 0], [50, 0]), 'even', 100))).toEqual(['0', '1']); // 110 m² take two anyhow
  });

  test('where the largest first would take one more', () => {
    // 50+30+20 and 40+40+20 fill two loads; largest first takes 50+40, 40+30+20, 20.
    expect(
      shareLoads(parcels([50, 0], [40, 1], [40, 2], [30, 3], [20, 4], [20, 5]), 'even', 100).length,
    ).toBe(2);
  });

  test('as they were cut where every load is to be filled', () => {
    const said = parcels([80, 0], [20, 90], [50, 95]);
    expect(idsOf(shareLoads(said, 'fewest', 100))).toEqual(['0+1', '2']); // 80 + 20 m²: full
    expect(idsOf(shareLoads(said, 'even', 100))).toEqual(['0', '1+2']); // nearer, and as few
  });

  test('as they were cut when there are many', () => {
    const many = Array.from({ length: 60 }, (_, i) => [i % 2 === 0 ? 100 / 3 : 200 / 3, i] as const);
    expect(shareLoads(parcels(...many), 'fewest', 100).length).toBe(30); // thirty pairs of 100 m²
  });

  test('not at all when there is none', () => {
    expect(shareLoads([], 'even', 100)).toEqual([]);
  });
});

const someAreas = fc.array(fc.integer({ min: 5, max: 100 }), { minLength: 1, maxLength: 7 });

describe('laws', () => {
  test('every section is in one load within what it holds, and no fewer loads would do', () => {
    fc.assert(
      fc.property(someAreas, (areasM2) => {
        const loads = shareLoads(
          parcels(...areasM2.map((m2, i) => [m2, (i * 37) % 50] as const)),
          'even',
          100,
        );
        expect(loads.flatMap((load) => load.map(({ id }) => id)).sort()).toEqual(
          areasM2.map((_, i) => `${i}`).sort(),
        );
        for (const load of loads) {
          expect(load.reduce((sum, { areaM2 }) => sum + areaM2, 0)).toBeLessThanOrEqual(100 * (1 + 1e-8));
        }
        expect(loads.length).toBe(fewestByTrying(areasM2, 100));
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  test('a larger load never takes more fills', () => {
    fc.assert(
      fc.property(someAreas, fc.integer({ min: 0, max: 60 }), (areasM2, moreM2) => {
        const said = parcels(...areasM2.map((m2, i) => [m2, i] as const));
        expect(shareLoads(said, 'even', 100 + moreM2).length).toBeLessThanOrEqual(
          shareLoads(said, 'even', 100).length,
        );
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});
