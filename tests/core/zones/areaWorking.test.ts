import { tracedRing } from '../../../core/curves/index.ts';
import { describe, expect, test } from 'vitest';
import { GRID_M, ringPerimeterM } from '../../../core/kernel/index.ts';
import { areaStepM2, FOOT_M, SQUARE_FOOT_M2, type UnitSystem } from '../../../core/units/index.ts';
import type { Outline, Yard } from '../../../core/yard.ts';
import { areaWorking, printedZones, resolveZones } from '../../../core/zones/index.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomStar, randomYard, seededRandom, yardOutlines } from '../../support/randomYards.ts';

function yardWith(outlines: readonly Outline[], unitSystem: UnitSystem, cornerSigmaM: number | null): Yard {
  const yard = yardOf({ outlines });
  return { ...yard, details: { ...yard.details, unitSystem, cornerSigmaM } };
}

function work(yard: Yard, zoneId: string) {
  const resolved = resolveZones(yard);
  if (!resolved.ok) throw new Error('the yard does not resolve');
  const working = areaWorking(resolved.value, yard, zoneId);
  if (working === undefined) throw new Error('no working');
  return { working, resolved: resolved.value };
}

describe('a lawn of 20 m by 10 m with two beds that overlap', () => {
  const outlines = [
    outline('zone', 'first', rect(-5, 0, 6, 10)),
    outline('zone', 'lawn', rect(0, 0, 20, 10)),
    outline('bed', 'rose', rect(4, 2, 4, 4)),
    outline('bed', 'fern', rect(6, 4, 4, 4)),
    outline('keep-off', 'strip', rect(19, -1, 3, 12)),
  ];
  const { working } = work(yardWith(outlines, 'metric', 0.1), 'lawn');

  test('each outline is shown with its own area and with what it takes', () => {
    expect(working.owned.shapes).toEqual([{ name: 'first', kind: 'zone', ownArea: 60, takes: 10 }]); // 6 × 10; 1 × 10
    expect(working.cutOut.shapes.map(({ takes }) => takes)).toEqual([16, 16]); // 4 × 4 each
    expect(working.cutOut.countedTwice).toBe(4); // they share 2 × 2
    expect(working.cutOut.together).toBe(28); // 16 + 16 - 4
    expect(working.leftOut.shapes).toEqual([{ name: 'strip', kind: 'keep-off', ownArea: 36, takes: 10 }]); // 3 × 12; 1 × 10
  });

  test('the balance is that of the drawing', () => {
    const worked = Object.fromEntries(working.balance.map((line) => [line.item, line.worked]));
    // 20 × 10; 10; 28; 200 - 10 - 28; 10; 162 - 10
    expect(worked).toEqual({ gross: 200, owned: 10, 'cut out': 28, turf: 162, 'left out': 10, treated: 152 });
  });

  test('the ± is that of the corners that bound what is treated', () => {
    const { sigmaM2, parts } = working.sigma;
    // By hand, each edge's length shared between its two corners by where its middle lies, squares summed:
    // south and north edge 18 m about the middle of the lawn's 20 m: 4 (9²) = 324
    // west edge 10 m, all of the first zone's: 2 (5²) = 50; east edge 10 m about the middle of the strip's 12 m: 50
    // rose: (4,2) 2²+2²; (8,2) 2²+1.5²; (8,6) 0.5²+0.5²; (4,6) 1.5²+2² = 21; fern, by symmetry, 21
    expectNear(sigmaM2 ?? Number.NaN, 0.1 * Math.sqrt(324 + 50 + 50 + 21 + 21), 1e-5, 'm²'); // σ √Σ
    expect(parts.map((part) => part.kind === 'points' && part.name)).toEqual([
      ...['lawn', 'first', 'strip', 'rose', 'fern'], // as they contribute
    ]);
  });

  test('what is no zone has no working', () => {
    const { resolved } = work(yardWith(outlines, 'metric', null), 'lawn');
    expect(areaWorking(resolved, yardWith(outlines, 'metric', null), 'rose')).toBeUndefined();
  });
});

test('on random yards the working gives the areas of the yard, and its columns add up', () => {
  for (let seed = 1; seed <= 100; seed++) {
    const random = seededRandom(seed);
    const units = seed % 2 === 0 ? 'us' : 'metric';
    const unitM2 = units === 'us' ? SQUARE_FOOT_M2 : 1;
    const second = outline(
      'zone',
      'second',
      randomStar(random, 7, { xM: between(random, 0, 30), yM: 5 }, 20, 0.4),
    );
    const outlines = [...yardOutlines(randomYard(random, 5 + (seed % 20), seed % 7)), second];
    const yard = yardWith(outlines, units, 0.1);
    const printed = (resolved: ReturnType<typeof work>['resolved']) => printedZones(resolved, units);
    for (const zoneId of ['lawn', 'second']) {
      const { working, resolved } = work(yard, zoneId);
      const at = resolved.zones.findIndex((zone) => zone.zoneId === zoneId);
      const zone = resolved.zones[at];
      const drawn = outlines.find((row) => row.id === zoneId);
      const ring = drawn ? tracedRing(drawn.outer) : [];
      const [edge] = working.rings;
      if (zone === undefined || edge === undefined) throw new Error(`no zone of seed ${seed}`);
      // The accuracy `ringWorking` states, and the kernel's: perimeter times its grid.
      const lengthM = units === 'us' ? FOOT_M : 1;
      const tolerance = ringPerimeterM(ring) * (GRID_M + 5e-7 * lengthM) + ring.length * 5e-7 * unitM2;
      expectNear(edge.area * unitM2, zone.grossAreaM2, tolerance, `m² gross of seed ${seed}`);
      const of = Object.fromEntries(working.balance.map((line) => [line.item, line])) as Record<
        string,
        (typeof working.balance)[number]
      >;
      const value = (item: string): number => of[item]?.worked ?? Number.NaN;
      const stepM2 = areaStepM2(units) / 100;
      expectNear(value('treated') * unitM2, zone.treatedAreaM2, stepM2 * 1.001, `m² treated of seed ${seed}`);
      expectNear(value('turf') * unitM2, zone.turfAreaM2, 2 * stepM2, `m² turf of seed ${seed}`);
      expectNear(value('gross') - value('owned') - value('cut out'), value('turf'), 1e-9, 'units²');
      expectNear(value('turf') - value('left out'), value('treated'), 1e-9, 'units²');
      expectNear((of.treated?.shown ?? 0) * unitM2, printed(resolved)[at]?.treatedM2 ?? -1, 1e-9, 'm²');
      for (const taken of [working.owned, working.cutOut, working.leftOut]) {
        const sum = taken.shapes.reduce((total, shape) => total + shape.takes, 0);
        expectNear(sum - taken.countedTwice, taken.together, 1e-9, 'units²');
      }
    }
  }
}, 60_000);
