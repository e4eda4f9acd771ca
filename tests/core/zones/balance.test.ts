import { describe, expect, test } from 'vitest';
import { regionsAreaM2, ringPerimeterM, unionRegions } from '../../../core/kernel/index.ts';
import { areaStepM2 } from '../../../core/units/index.ts';
import type { Outline, OverlapRule, TracedCorner } from '../../../core/yard.ts';
import { type ResolvedYard, printedSum, printedZones, resolveZones } from '../../../core/zones/index.ts';
import { groundOf, outline, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { overlappingYard } from '../../support/overlappingYard.ts';
import { seededRandom } from '../../support/randomYards.ts';

function resolved(outlines: readonly Outline[], overlapRule: OverlapRule = 'drawn-first'): ResolvedYard {
  const ground = groundOf(outlines);
  const answer = resolveZones({ ...ground, details: { ...ground.details, overlapRule } });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value;
}

const YARDS = 150;

describe('on random yards of zones that overlap', () => {
  test('zones as drawn, less what is in several, are the ground they cover together', () => {
    let shared = 0;
    for (let seed = 1; seed <= YARDS; seed++) {
      const { outlines, rule } = overlappingYard(seededRandom(seed));
      const { zones, overlaps } = resolved(outlines, rule);
      const rings = outlines.flatMap(({ kind, outer }) =>
        kind === 'zone' && outer.kind === 'corners' ? [outer.corners] : [],
      );
      const unionM2 = regionsAreaM2(unionRegions(rings.map((ring) => region(ring)))); // another operation
      const slackM2 = 1e-6 * rings.reduce((sum, ring) => sum + ringPerimeterM(ring), 0); // a grid step along edges
      const sum = (areaOf: (zone: (typeof zones)[number]) => number) =>
        zones.reduce((total, zone) => total + areaOf(zone), 0);
      const ownedM2 = sum((zone) => zone.ownedByOtherAreaM2);
      expectNear(sum((zone) => zone.grossAreaM2) - ownedM2, unionM2, slackM2, `m² (seed ${seed})`);
      expectNear(
        overlaps.reduce((total, { areaM2 }) => total + areaM2, 0),
        ownedM2,
        slackM2 + zones.length ** 2 * 1e-4, // overlaps below a square centimetre are not told
        `m² (seed ${seed})`,
      );
      for (const zone of zones) {
        const partsM2 = zone.turfAreaM2 + zone.cutOutAreaM2 + zone.ownedByOtherAreaM2;
        expectNear(partsM2, zone.grossAreaM2, 1e-9, `m² (seed ${seed})`);
        expectNear(regionsAreaM2(zone.turf), zone.turfAreaM2, 1e-9, `m² (seed ${seed})`);
        expect(zone.treatedAreaM2).toBeLessThanOrEqual(zone.turfAreaM2 + slackM2);
      }
      // No ground is treated for two zones.
      const treatedM2 = sum((zone) => zone.treatedAreaM2);
      const together = unionRegions(zones.flatMap((zone) => zone.treated));
      expectNear(regionsAreaM2(together), treatedM2, slackM2, `m² (seed ${seed})`);
      shared += overlaps.length;
    }
    expect(shared).toBeGreaterThan(YARDS); // the yards did overlap
  });

  test('so do the figures shown, to their last digit, in both unit systems', () => {
    for (let seed = 1; seed <= YARDS; seed++) {
      const { outlines, rule } = overlappingYard(seededRandom(seed));
      const yard = resolved(outlines, rule);
      for (const units of ['us', 'metric'] as const) {
        const zones = printedZones(yard, units);
        const all = printedSum(zones);
        const steps = (areaM2: number) => Math.round(areaM2 / areaStepM2(units));
        expect(steps(all.grossM2) - steps(all.ownedByOtherM2)).toBe(steps(all.groundM2));
        expect(steps(all.turfM2) + steps(all.cutOutM2)).toBe(steps(all.groundM2));
        for (const zone of zones) {
          expect(steps(zone.turfM2) + steps(zone.cutOutM2) + steps(zone.ownedByOtherM2)).toBe(
            steps(zone.grossM2),
          );
        }
        const exactM2 = yard.zones.reduce((sum, zone) => sum + zone.grossAreaM2 - zone.ownedByOtherAreaM2, 0);
        expectNear(all.groundM2, exactM2, 1.5 * areaStepM2(units), `m² (seed ${seed})`); // gross nearest, owned within one step
      }
    }
  });
});

describe('three zones over one place', () => {
  const a = outline('zone', 'a', rect(0, 0, 10, 10)); // 100 m²
  const b = outline('zone', 'b', rect(5, 0, 10, 9)); // 90 m²
  const c = outline('zone', 'c', rect(0, 5, 10, 11)); // 110 m²
  // a and b share 5 * 9, a and c 10 * 5, b and c 5 * 4, all three that same 5 * 4.

  test.each([
    ['drawn-first', [0, 45, 50]],
    ['drawn-last', [45 + 50 - 20, 20, 0]],
    ['smaller', [45, 0, 50]],
    ['larger', [50, 45, 0]],
  ] as const)('have one owner for it: %s', (rule, owned) => {
    const { zones } = resolved([a, b, c], rule);
    zones.forEach((zone, i) => {
      expectNear(zone.ownedByOtherAreaM2, owned[i] as number, 1e-4, `m² of ${zone.name}`); // worked by hand as noted
    });
    expect(zones.map(({ zoneId }) => zoneId)).toEqual(['a', 'b', 'c']); // in the order drawn
  });

  test('and whoever claims goes first', () => {
    const { zones, overlaps } = resolved([a, b, { ...c, claimsOverlaps: true }]);
    expectNear(zones[0]?.ownedByOtherAreaM2 ?? Number.NaN, 50, 1e-4, 'm²'); // all it shares with c
    expectNear(zones[1]?.ownedByOtherAreaM2 ?? Number.NaN, 45, 1e-4, 'm²'); // c's 20, a's other 25
    expect(overlaps.map(({ ownerId, otherId, by }) => [ownerId, otherId, by])).toEqual([
      ['c', 'a', 'claimed'],
      ['a', 'b', 'drawn-first'],
      ['c', 'b', 'claimed'],
    ]);
    expectNear(overlaps[1]?.areaM2 ?? Number.NaN, 25, 1e-4, 'm²'); // 45 - 20
  });
});

describe('strips kept off', () => {
  const lawn = outline('zone', 'lawn', rect(0, 0, 20, 10));

  test('are untreated turf, counted once with keep-offs, check plots and cut-outs', () => {
    const { zones, strips } = resolved([
      { ...lawn, keepOffM: 1 },
      outline('bed', 'bed', rect(0, 0, 5, 1)), // 5, all of it in the strip
      outline('keep-off', 'east', rect(18, 0, 2, 10)), // 20, of which 20 - 8 in the strip
      outline('check-plot', 'plot', rect(8, 0, 2, 3)), // 6, of which 2 in the strip
    ]);
    expectNear(zones[0]?.turfAreaM2 ?? Number.NaN, 195, 1e-4, 'm²'); // 200 - 5
    expectNear(zones[0]?.treatedAreaM2 ?? Number.NaN, 18 * 8 - 8 - 4, 1e-4, 'm²'); // inside the strip, less the rest
    expect(strips).toMatchObject([{ outlineId: 'lawn', strips: [{ edge: null, widthM: 1 }] }]);
  });

  test('reach every zone they lie in, and a cut-out outside takes no turf', () => {
    const pond = { ...outline('water', 'pond', rect(21, 2, 2, 2)), keepOffM: 3 };
    const next = outline('zone', 'next', rect(0, 10, 20, 5));
    const { zones, warnings } = resolved([lawn, next, pond]);
    expect(zones[0]?.turfAreaM2).toBe(200); // nothing cut out
    // 2 m into the lawn's east end over the pond's 2 m, its round corners up to the lawn's south edge and north.
    expect(zones[0]?.treatedAreaM2).toBeLessThan(200 - 2 * 2);
    expect(zones[1]?.treatedAreaM2).toBe(100); // 20 * 5: too far
    expect(warnings).toEqual([]);
  });

  test('that swallow a zone whole are told', () => {
    const { zones, warnings } = resolved([{ ...lawn, keepOffM: 5.01 }]);
    expect(zones[0]).toMatchObject({ turfAreaM2: 200, treatedAreaM2: 0 });
    expect(warnings).toEqual([
      { kind: 'shape/covered-whole', where: { outlineId: 'lawn', name: 'lawn' }, facts: {} },
    ]);
  });
});

describe('what cannot stand is named and nothing is counted', () => {
  const far = (xM: number) => outline('zone', 'z', [...rect(0, 0, 5, 5), { xM, yM: 2 }]);
  test.each([
    ['NaN', far(Number.NaN), 'shape/not-finite'],
    ['infinity', far(Number.POSITIVE_INFINITY), 'shape/not-finite'],
    [
      'a width of NaN',
      { ...outline('zone', 'z', rect(0, 0, 5, 5)), keepOffM: Number.NaN },
      'shape/keep-off-width',
    ],
    ['a negative width', { ...outline('zone', 'z', rect(0, 0, 5, 5)), keepOffM: -1 }, 'shape/keep-off-width'],
    [
      'a circle of no radius',
      { ...outline('bed', 'z', []), outer: { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 0 } },
      'shape/no-size',
    ],
    [
      'a circle of radius NaN',
      {
        ...outline('bed', 'z', []),
        outer: { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: Number.NaN },
      },
      'shape/no-size',
    ],
  ] as const)('%s', (_name, bad, kind) => {
    const answer = resolveZones(groundOf([outline('zone', 'good', rect(0, 0, 9, 9)), bad as Outline]));
    expect(answer.ok ? [] : answer.problems).toMatchObject([{ kind, where: { outlineId: 'z' } }]);
  });

  test('a curve that crosses itself, at the place where it does', () => {
    // The arc over the south edge bulges through the north one.
    const [sw, ...rest] = rect(0, 0, 10, 2);
    const corners: TracedCorner[] = [
      { xM: 0, yM: 0, ...sw, run: { kind: 'arc', via: { xM: 5, yM: 4 } } },
      ...rest,
    ];
    const arched = { ...outline('zone', 'z', []), outer: { kind: 'corners', corners } as const };
    const answer = resolveZones(groundOf([arched]));
    const [problem] = answer.ok ? [] : answer.problems;
    expect(problem).toMatchObject({ kind: 'shape/self-crossing', where: { outlineId: 'z', name: 'z' } });
    const at = problem && 'at' in problem.where ? problem.where.at : undefined;
    expectNear(at?.yM ?? Number.NaN, 2, 1e-9, 'm'); // on the north edge
  });

  test('corners drawn twice and outlines drawn twice count once', () => {
    const lawn = outline(
      'zone',
      'lawn',
      rect(0, 0, 20, 10).flatMap((corner) => [corner, corner]),
    );
    const bed = outline('bed', 'bed', rect(1, 1, 2, 2));
    const { zones } = resolved([lawn, { ...lawn, id: 'again' }, bed, { ...bed, id: 'bed again' }]);
    expect(zones.map(({ turfAreaM2 }) => turfAreaM2)).toEqual([196, 0]); // 200 - 4, and nothing twice
  });

  test('a cut-out larger than its zone leaves nothing, and says so', () => {
    const { zones, warnings } = resolved([
      outline('zone', 'lawn', rect(0, 0, 5, 5)),
      outline('hardscape', 'yard', rect(-10, -10, 30, 30)),
    ]);
    expect(zones[0]).toMatchObject({ treatedAreaM2: 0, turfAreaM2: 0, grossAreaM2: 25 }); // 5 * 5
    expect(warnings.map(({ kind }) => kind)).toEqual(['shape/covered-whole']);
  });
});
