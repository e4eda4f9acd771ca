import { describe, expect, test } from 'vitest';
import { intersectRegions, regionsAreaM2, ringPerimeterM } from '../../../core/kernel/index.ts';
import type { Outline } from '../../../core/yard.ts';
import { type ResolvedYard, type ResolvedZone, resolveZones } from '../../../core/zones/index.ts';
import { groundOf, lShape, moved, outline, points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomYard, seededRandom, yardOutlines } from '../../support/randomYards.ts';

function resolved(outlines: readonly Outline[], cornerSigmaM: number | null = null): ResolvedYard {
  const answer = resolveZones(groundOf(outlines, cornerSigmaM));
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value;
}

function onlyZone(outlines: readonly Outline[], cornerSigmaM: number | null = null): ResolvedZone {
  const [zone] = resolved(outlines, cornerSigmaM).zones;
  if (zone === undefined) throw new Error('no zone');
  return zone;
}

const front = outline('zone', 'front', rect(0, 0, 20, 10));

describe('a lawn', () => {
  test('with nothing in it is treated whole', () => {
    expect(onlyZone([front])).toMatchObject({
      zoneId: 'front',
      name: 'front',
      grossAreaM2: 200, // 20 * 10
      turfAreaM2: 200,
      treatedAreaM2: 200,
      cutOutAreaM2: 0,
      ownedByOtherAreaM2: 0,
      sigmaM2: null,
    });
  });

  test('loses its beds, buildings, paving, water and trees once, however they lie', () => {
    const zone = onlyZone([
      front,
      outline('bed', 'inside', rect(1, 1, 2, 2)), // 4
      outline('building', 'over the edge', rect(18, 8, 5, 5)), // 2 * 2 of it inside
      outline('hardscape', 'path', rect(8, 0, 1, 10)), // 10, edge to edge
      outline('bed', 'along the path', rect(7, 4, 2, 2)), // 2 beside the path
      outline('tree', 'twice', rect(12, 3, 1, 1)), // 1
      outline('tree', 'twice again', rect(12, 3, 1, 1)), // nothing more
      outline('water', 'pond', rect(14, 5, 2, 1).reverse()), // 2
    ]);
    expectNear(zone.cutOutAreaM2, 4 + 4 + 10 + 2 + 1 + 2, 1e-4, 'm²'); // as noted beside each
    expectNear(zone.turfAreaM2, 200 - 23, 1e-4, 'm²');
    expectNear(regionsAreaM2(zone.turf), zone.turfAreaM2, 1e-9, 'm²'); // the regions are what is counted
    expect(zone.turf.length).toBe(2); // the path parts it
  });

  test('is not treated on keep-off strips and check plots, which stay turf', () => {
    const zone = onlyZone([
      front,
      outline('bed', 'bed', rect(1, 1, 2, 2)),
      outline('keep-off', 'strip', rect(0, 0, 20, 3)),
      outline('check-plot', 'plot', rect(10, 5, 2, 2)),
    ]);
    expectNear(zone.turfAreaM2, 196, 1e-4, 'm²'); // 200 - 4
    expectNear(zone.treatedAreaM2, 196 - (60 - 4) - 4, 1e-4, 'm²'); // the strip's 60 holds the bed's 4
  });

  test('with lawn inside a ring of paving keeps that lawn', () => {
    const paving = outline('hardscape', 'ring', rect(5, 2, 6, 6), rect(7, 4, 2, 2));
    const zone = onlyZone([front, paving]);
    expectNear(zone.turfAreaM2, 200 - 36 + 4, 1e-4, 'm²'); // 6² less 2²
    expect(zone.turf.length).toBe(2);
  });

  test('whose own hole reaches over its edge counts only the ground that is there', () => {
    const zone = onlyZone([outline('zone', 'holed', rect(0, 0, 10, 10), rect(8, 4, 4, 2))]);
    expectNear(zone.grossAreaM2, 96, 1e-4, 'm²'); // 100 - 2 * 2
  });

  test('carries the spread of its corners when that is stated', () => {
    const sigma = onlyZone([outline('zone', 'z', rect(0, 0, 30, 40))], 0.1).sigmaM2;
    expectNear(sigma ?? Number.NaN, 5, 1e-9, 'm²'); // σ times the diagonal: 0.1 * 50
  });
});

describe('two lawns that overlap', () => {
  const back = outline('zone', 'back', rect(15, 0, 20, 10));

  test('share no ground: the first drawn owns it', () => {
    const { zones, overlaps, warnings } = resolved([front, back]);
    expectNear(zones[0]?.turfAreaM2 ?? Number.NaN, 200, 1e-9, 'm²'); // 20 * 10, whole
    expectNear(zones[1]?.ownedByOtherAreaM2 ?? Number.NaN, 50, 1e-4, 'm²'); // 5 * 10
    expectNear(zones[1]?.turfAreaM2 ?? Number.NaN, 150, 1e-4, 'm²'); // 200 - 50
    expect(overlaps).toMatchObject([{ ownerId: 'front', otherId: 'back' }]);
    expectNear(overlaps[0]?.areaM2 ?? Number.NaN, 50, 1e-4, 'm²');
    expect(warnings).toMatchObject([
      {
        kind: 'shape/overlaps',
        where: { outlineId: 'back' },
        facts: { ownerName: 'front', by: 'drawn-first' },
      },
    ]);
  });

  test('lose a bed on the shared ground once', () => {
    const { zones } = resolved([front, back, outline('bed', 'bed', rect(16, 1, 2, 2))]);
    const totalM2 = zones.reduce((sum, zone) => sum + zone.turfAreaM2, 0);
    expectNear(totalM2, 35 * 10 - 4, 1e-4, 'm²'); // both together are 35 * 10
  });

  test('of which the second lies in the first leave it nothing, and say so', () => {
    const inner = outline('zone', 'inner', rect(2, 2, 3, 3));
    const { zones, warnings } = resolved([front, inner]);
    expectNear(zones[1]?.turfAreaM2 ?? Number.NaN, 0, 1e-9, 'm²');
    expect(warnings.map(({ kind }) => kind)).toEqual(['shape/covered-whole', 'shape/overlaps']);
    // Drawn the other way about, the small one is its own and the large one has a hole.
    const swapped = resolved([inner, front]).zones;
    expectNear(swapped[1]?.turfAreaM2 ?? Number.NaN, 191, 1e-9, 'm²'); // 200 - 9
  });

  test('that only share an edge are two plain lawns', () => {
    const { overlaps, warnings } = resolved([front, outline('zone', 'next', rect(20, 0, 5, 10))]);
    expect(overlaps).toEqual([]);
    expect(warnings).toEqual([]);
  });
});

describe('what the person should know', () => {
  test('a bed outside every lawn', () => {
    const { warnings } = resolved([front, outline('bed', 'stray', rect(40, 0, 2, 2))]);
    expect(warnings).toMatchObject([
      { kind: 'shape/cut-out-outside', where: { outlineId: 'stray', at: { xM: 40, yM: 0 } } },
    ]);
  });

  test('a bed that only touches a lawn from outside', () => {
    const { warnings } = resolved([front, outline('bed', 'beside', rect(20, 2, 2, 2))]);
    expect(warnings.map(({ kind }) => kind)).toEqual(['shape/cut-out-outside']);
  });

  test('but not a house between the lawns, nor a bed that reaches into one', () => {
    const { warnings } = resolved([
      front,
      outline('building', 'house', rect(40, 0, 9, 9)),
      outline('bed', 'border', rect(19.9, 2, 2, 2)),
    ]);
    expect(warnings).toEqual([]);
  });

  test('a lawn that is covered whole has no area left', () => {
    const { zones, warnings } = resolved([front, outline('hardscape', 'patio', rect(-1, -1, 22, 12))]);
    expect(zones[0]).toMatchObject({ turfAreaM2: 0, treatedAreaM2: 0, cutOutAreaM2: 200, turf: [] });
    expect(warnings.map(({ kind }) => kind)).toEqual(['shape/covered-whole']);
  });
});

test('every outline that cannot stand is named, and nothing is counted', () => {
  const answer = resolveZones(
    groundOf([
      outline('zone', 'bow-tie', points([0, 0], [2, 2], [2, 0], [0, 2])),
      front,
      outline('bed', 'line', points([0, 0], [1, 1], [2, 2])),
      outline('bed', 'holed', rect(0, 0, 5, 5), points([1, 1], [2, 2])),
    ]),
  );
  expect(answer.ok).toBe(false);
  expect(answer.ok ? [] : answer.problems).toMatchObject([
    { kind: 'shape/self-crossing', where: { outlineId: 'bow-tie', at: { xM: 1, yM: 1 } } },
    { kind: 'shape/zero-area', where: { outlineId: 'line' } },
    { kind: 'shape/too-few-points', where: { outlineId: 'holed' } },
  ]);
});

test('no zones, no ground', () => {
  expect(resolved([])).toEqual({ zones: [], overlaps: [], strips: [], untreated: [], warnings: [] });
});

describe('laws on random yards', () => {
  test('lawn and cut-outs inside make up the zone, the cut-outs measured on their own', () => {
    for (let seed = 1; seed <= 120; seed++) {
      const random = seededRandom(seed);
      const yard = randomYard(random, 5 + Math.floor(random() * 40), 1 + Math.floor(random() * 12));
      const zone = onlyZone(yardOutlines(yard));
      const cutM2 = regionsAreaM2(
        intersectRegions(
          [region(yard.zone)],
          yard.beds.map((bed) => region(bed)),
        ),
      );
      const slackM2 = 1e-6 * ringPerimeterM(yard.zone); // a grid step along the edge
      expectNear(zone.turfAreaM2 + cutM2, zone.grossAreaM2, slackM2, `m² (seed ${seed})`);
      expectNear(zone.cutOutAreaM2, cutM2, slackM2, `m² (seed ${seed})`);
    }
  });

  test('areas do not depend on the order of the beds, their direction or their first corner', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const random = seededRandom(seed);
      const yard = randomYard(random, 24, 8);
      const plain = onlyZone(yardOutlines(yard));
      const beds = yard.beds.map((bed) => [...bed.slice(1), ...bed.slice(0, 1)].reverse()).reverse();
      const other = onlyZone(yardOutlines({ zone: [...yard.zone].reverse(), beds }));
      expectNear(other.turfAreaM2, plain.turfAreaM2, 2e-6 * ringPerimeterM(yard.zone), `m² (seed ${seed})`);
    }
  });

  test('areas survive turning the whole yard', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const random = seededRandom(seed);
      const yard = randomYard(random, 24, 8);
      const turnRad = 6 * random();
      const turned = {
        zone: moved(yard.zone, turnRad, 900, -400),
        beds: yard.beds.map((bed) => moved(bed, turnRad, 900, -400)),
      };
      const slackM2 = 2e-6 * ringPerimeterM(yard.zone);
      expectNear(
        onlyZone(yardOutlines(turned)).turfAreaM2,
        onlyZone(yardOutlines(yard)).turfAreaM2,
        slackM2,
        `m² (seed ${seed})`,
      );
    }
  });
});

test('an L with a bed in each arm has the area one works out by hand', () => {
  const zone = onlyZone([
    outline('zone', 'l', lShape(30, 20, 12, 8)),
    outline('bed', 'a', rect(2, 2, 4, 1)),
    outline('bed', 'b', rect(20, 3, 5, 2)),
  ]);
  expect(zone.turfAreaM2).toBe(30 * 20 - 12 * 8 - 4 - 10); // rectangle, notch, two beds
  expect(zone.turf[0]?.holes.length).toBe(2);
});
