import { describe, expect, test } from 'vitest';
import { type CutGround, cutZones } from '../../../core/plan/cutZones.ts';
import type { PlanLoad, PlanRequest } from '../../../core/plan/index.ts';
import { packLoads } from '../../../core/plan/packLoads.ts';
import type { Region } from '../../../core/spaces.ts';
import type { HeldCut } from '../../../core/yard.ts';
import type { ResolvedYard } from '../../../core/zones/index.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { planRequest } from '../../support/planRequest.ts';
import { randomGround, resolvedOf } from '../../support/randomGround.ts';

const YARD = resolvedOf({ Left: [region(rect(0, 0, 20, 9))], Right: [region(rect(30, 0, 30, 9))] });
const REQUEST = planRequest({ loadAreaM2: 100, swathM: 1.8 });
const SEEDS = Array.from({ length: 12 }, (_, i) => 40 + i);

test('a cut line points at the cut it is a part of, in its own zone', () => {
  const told: number[] = [];
  const cut = cutZones(
    YARD,
    REQUEST,
    () => false,
    (part) => told.push(part),
  );
  if (!cut.ok) throw new Error(JSON.stringify(cut.problems));
  const { sections, cuts, cutLines } = cut.value;
  expect(sections.map(({ id }) => id)).toEqual(['A1', 'A2', 'B1', 'B2', 'B3']); // 180 and 270 m² by 100
  expect(cuts.map(({ zoneId }) => zoneId)).toEqual(['Left', 'Right', 'Right']);
  for (const line of cutLines) {
    const zone = line.between[0].startsWith('A') ? 'Left' : 'Right';
    expect(cuts[line.cut]?.zoneId).toBe(zone);
  }
  expect(told.at(-1)).toBe(1);
});

test('a stop is heeded before each zone', () => {
  const cut = cutZones(
    YARD,
    REQUEST,
    () => true,
    () => undefined,
  );
  expect(cut.ok ? null : cut.problems[0].kind).toBe('plan/cancelled');
});

function cut(yard: ResolvedYard, request: Partial<PlanRequest>): CutGround {
  const done = cutZones(
    yard,
    { ...REQUEST, ...request },
    () => false,
    () => undefined,
  );
  if (!done.ok) throw new Error(JSON.stringify(done.problems));
  return done.value;
}

function loadsOf(yard: ResolvedYard, request: Partial<PlanRequest>): readonly PlanLoad[] {
  return packLoads(cut(yard, request), yard.zones, { ...REQUEST, ...request });
}

describe('fewest loads', () => {
  test('what one zone leaves joins the next on the way, whose first section fills the load up', () => {
    const { sections } = cut(YARD, { policy: 'fewest' });
    const areas = (letter: string): number[] =>
      sections
        .filter(({ id }) => id.startsWith(letter))
        .map(({ areaM2 }) => Math.round(areaM2))
        .sort((a, b) => a - b);
    expect(areas('A')).toEqual([80, 100]); // 180 m²
    expect(areas('B')).toEqual([20, 50, 100, 100]); // 270 m²: 20 fill up the 80, 50 are left
    expect(
      loadsOf(YARD, { policy: 'fewest' })
        .map(({ areaM2 }) => Math.round(areaM2))
        .sort((a, b) => b - a),
    ).toEqual([100, 100, 100, 100, 50]); // 450 m² by 100
  });

  test.each(SEEDS)(
    'take as many as all their ground asks for, on tape marks and on slopes, yard %i',
    (seed) => {
      const yard = randomZones(seed);
      const wholeM2 = amountM2(yard);
      const loadAreaM2 = wholeM2 / (1.5 + (seed % 7));
      const swathM = Math.sqrt(loadAreaM2) / 12;
      for (const markM of [null, 0.1]) {
        const loads = loadsOf(yard, { policy: 'fewest', loadAreaM2, swathM, markM });
        expect(loads.length).toBe(Math.ceil(wholeM2 / loadAreaM2)); // the law: ground by load, rounded up
        for (const { areaM2 } of loads) expect(areaM2).toBeLessThanOrEqual(loadAreaM2 * (1 + 1e-8));
        const sumM2 = loads.reduce((sum, { areaM2 }) => sum + areaM2, 0);
        expectNear(sumM2, wholeM2, 1e-7 * wholeM2, 'm²'); // every section in one load
      }
    },
  );
});

test.each(SEEDS)('a larger load never takes more fills, yard %i', (seed) => {
  const yard = randomZones(seed);
  for (const policy of ['even', 'fewest'] as const) {
    let before = Infinity;
    for (let loads = 9; loads >= 1; loads -= 1.3) {
      const loadAreaM2 = amountM2(yard) / loads;
      const fills = loadsOf(yard, { policy, loadAreaM2, swathM: Math.sqrt(loadAreaM2) / 12 }).length;
      expect(fills).toBeLessThanOrEqual(before);
      before = fills;
    }
  }
});

describe('held cuts', () => {
  const held = (id: string, zoneId: string, atXM: number): HeldCut => ({
    id,
    zoneId,
    from: { xM: atXM, yM: -2 },
    to: { xM: atXM, yM: 9 },
  });

  test('part their own zone, and the plan says which they are', () => {
    const { cuts, sections, warnings } = cut(YARD, { heldCuts: [held('mine', 'Left', 8)] });
    expect(cuts.filter(({ heldId }) => heldId === 'mine').map(({ from }) => from.xM)).toEqual([8]);
    expect(sections.map(({ areaM2 }) => Math.round(areaM2))).toEqual([72, 54, 54, 90, 90, 90]); // 8 x 9; 12 x 9 in two
    expect(warnings).toEqual([]);
  });

  test('that part nothing are said, with their zone and their place in it', () => {
    const heldCuts = [held('good', 'Left', 8), held('off', 'Left', 25), held('lost', 'gone', 5)];
    const said = cut(YARD, { heldCuts }).warnings.map(({ where, facts }) => [where, facts]);
    expect(said).toEqual([
      [{ thing: 'Left' }, { place: 2, isZoneGone: false }],
      [{ thing: 'gone' }, { place: 1, isZoneGone: true }],
    ]);
  });
});

/** Two to five zones of random ground far apart, the second one sloping. */
function randomZones(seed: number): ResolvedYard {
  const grounds = Array.from({ length: 2 + (seed % 4) }, (_, i) => {
    const shift = (ring: Region['outer']): Region['outer'] =>
      ring.map(({ xM, yM }) => ({ xM: xM + 60 * i, yM }));
    return randomGround(seed * 10 + i, 8 + ((seed + i) % 12), (seed + i) % 4).map(({ outer, holes }) => ({
      outer: shift(outer),
      holes: holes.map(shift),
    }));
  });
  const yard = resolvedOf(Object.fromEntries(grounds.map((ground, i) => [`zone ${i}`, ground])));
  return { ...yard, zones: yard.zones.map((zone, i) => (i === 1 ? { ...zone, amountFactor: 1.07 } : zone)) };
}

function amountM2({ zones }: ResolvedYard): number {
  return zones.reduce((sum, zone) => sum + zone.treatedAreaM2 * zone.amountFactor, 0);
}
