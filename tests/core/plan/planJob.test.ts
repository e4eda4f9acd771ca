import { straight, tracedRing } from '../../../core/curves/index.ts';
import { newJob, newOutline } from '../../../core/edits/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadAreaM2 } from '../../../core/applicators/index.ts';
import { type JobPlan, planJob } from '../../../core/plan/index.ts';
import type { Problem } from '../../../core/problems.ts';
import type { Applicator, Job, Outline, Product, Yard } from '../../../core/yard.ts';
import { applicatorWith, flOzPer1000Ft2, galPer1000Ft2, productWith } from '../../support/products.ts';

function outline(id: string, kind: Outline['kind'], x0: number, y0: number, x1: number, y1: number): Outline {
  const outer = [
    { xM: x0, yM: y0 },
    { xM: x1, yM: y0 },
    { xM: x1, yM: y1 },
    { xM: x0, yM: y1 },
  ];
  return newOutline({ id, kind, name: `${kind} ${id}`, outer: straight(outer) });
}

const FRONT = outline('front', 'zone', 0, 0, 20, 12);
const BACK = outline('back', 'zone', 30, 0, 60, 20);
const BED = outline('bed', 'bed', 40, 5, 45, 9);
/** Shares 5 × 12 m with FRONT, which was drawn first and owns it. */
const SIDE = outline('side', 'zone', 15, 0, 25, 12);

interface Parts {
  readonly outlines?: readonly Outline[];
  readonly product?: Partial<Product>;
  readonly applicator?: Partial<Applicator>;
  readonly job?: Partial<Job>;
}

function yardWith(parts: Parts = {}): Yard {
  const frame = { kind: 'loose' } as const;
  return {
    details: {
      id: 'yard',
      name: 'Test yard',
      groundDate: '2026-05-12',
      unitSystem: 'us',
      frame,
      cornerSigmaM: 0.1,
      overlapRule: 'drawn-first',
      amountsBy: 'plan',
    },
    pictures: [],
    outlines: parts.outlines ?? [FRONT, BACK, BED],
    marks: [],
    elevations: [],
    checks: [],
    products: [productWith(parts.product)],
    applicators: [applicatorWith(parts.applicator)],
    jobs: [newJob({ id: 'j1', name: 'June iron', productId: 'p1', applicatorId: 'a1', ...parts.job })],
  };
}

function planOf(yard: Yard): JobPlan {
  const planned = planJob(yard, 'j1');
  if (!planned.ok) throw new Error(planned.problems[0].kind);
  return planned.value;
}

function problemsOf(yard: Yard, jobId = 'j1'): readonly Problem[] {
  const planned = planJob(yard, jobId);
  return planned.ok ? [] : planned.problems;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

describe('the plan of a job', () => {
  test('mixes exactly what the treated ground takes, one load a section', () => {
    const plan = planOf(yardWith());
    const treatedM2 = 20 * 12 + 30 * 20 - 5 * 4; // by hand: front, back, less the bed
    expect(sum(plan.mixes.map((mix) => mix.areaM2))).toBeCloseTo(treatedM2, 3);
    expect(plan.productTotalL).toBeCloseTo(treatedM2 * flOzPer1000Ft2(3), 6); // rate × treated area
    expect(plan.productTotalL + plan.carrierTotalL).toBeCloseTo(treatedM2 * galPer1000Ft2(1.25), 5); // whole mix
    expect(plan.mixes.map((mix) => mix.sectionId).sort()).toEqual(
      plan.ground.sections.map((section) => section.id).sort(), // every section, once
    );
  });

  test('asks no more of any load than the applicator holds', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 20, noNaN: true }), (capacityL) => {
        const yard = yardWith({ applicator: { capacityL } });
        const plan = planOf(yard);
        const loadM2 = loadAreaM2(yard.products[0] as Product, yard.applicators[0] as Applicator);
        for (const mix of plan.mixes) {
          expect(mix.areaM2).toBeLessThanOrEqual(loadM2 * (1 + 1e-6));
          expect(mix.productL + mix.carrierL).toBeLessThanOrEqual(capacityL * (1 + 1e-6));
        }
      }),
      { numRuns: 10 },
    );
  });

  test('puts the mixes in the order the sections are walked', () => {
    const plan = planOf(yardWith());
    const walked = [...plan.ground.passes].sort((a, b) => a.order - b.order).map((pass) => pass.sectionId);
    expect(plan.mixes.map((mix) => mix.sectionId)).toEqual([...new Set(walked)]);
  });

  test('takes in only the zones of the job', () => {
    const plan = planOf(yardWith({ job: { zoneIds: ['front'] } }));
    expect(plan.ground.resolved.zones.map((zone) => zone.zoneId)).toEqual(['front']);
    expect(sum(plan.mixes.map((mix) => mix.areaM2))).toBeCloseTo(240, 3); // 20 m × 12 m
  });

  test('leaves shared ground with its owner even when the owner is not in the job', () => {
    const plan = planOf(yardWith({ outlines: [FRONT, SIDE], job: { zoneIds: ['side'] } }));
    expect(sum(plan.mixes.map((mix) => mix.areaM2))).toBeCloseTo(60, 3); // 10 × 12 m less the shared 5 × 12 m
  });

  test('mixes for the sloping surface where the yard says so, and for the map’s area where not', () => {
    const bank: Outline = { ...FRONT, slope: { kind: 'grade', grade: 0.75 } };
    const byMap = yardWith({ outlines: [bank, BACK] });
    const bySurface = { ...byMap, details: { ...byMap.details, amountsBy: 'surface' } as const };
    const mapL = (20 * 12 + 30 * 20) * flOzPer1000Ft2(3); // by hand: rate × (front + back)
    const surfaceL = (20 * 12 * 1.25 + 30 * 20) * flOzPer1000Ft2(3); // √(1 + 0.75²) = 1.25 on the front alone
    expect(planOf(byMap).productTotalL).toBeCloseTo(mapL, 6);
    expect(planOf(bySurface).productTotalL).toBeCloseTo(surfaceL, 6);
  });

  test('cuts a slope into loads that fit the applicator by its surface', () => {
    const bank: Outline = { ...BACK, slope: { kind: 'grade', grade: 0.75 } };
    fc.assert(
      fc.property(fc.double({ min: 4, max: 20, noNaN: true }), (capacityL) => {
        const byMap = yardWith({ outlines: [bank], applicator: { capacityL } });
        const yard = { ...byMap, details: { ...byMap.details, amountsBy: 'surface' } as const };
        const plan = planOf(yard);
        const loadM2 = loadAreaM2(yard.products[0] as Product, yard.applicators[0] as Applicator);
        expect(plan.mixes).toHaveLength(Math.ceil((600 * 1.25) / loadM2)); // ⌈surface / load⌉; 30 × 20 × √(1 + 0.75²)
        for (const mix of plan.mixes) {
          expect(mix.productL + mix.carrierL).toBeLessThanOrEqual(capacityL * (1 + 1e-6)); // none overflows
        }
        const mapM2 = sum(plan.ground.sections.map((section) => section.areaM2));
        expect(mapM2).toBeCloseTo(600, 3); // sections stay the map's: 30 × 20
      }),
      { numRuns: 10 },
    );
  });

  test('of a hose-end sprayer carries its dial', () => {
    const applicator = { kind: 'hose-end', capacityL: 0.95, carrierLPerM2: galPer1000Ft2(5) } as const;
    const plan = planOf(yardWith({ applicator }));
    for (const mix of plan.mixes) expect(mix.dialRatio).toBeCloseTo(0.6 / 128, 12); // 3 fl oz ÷ 5 gal; 128 fl oz = 1 gal
  });

  test('tells of an unlikely carrier volume among its warnings and goes on', () => {
    const plan = planOf(yardWith({ applicator: { carrierLPerM2: galPer1000Ft2(8), capacityL: 100 } }));
    expect(plan.ground.warnings.map((problem) => problem.kind)).toContain('value/carrier-unusual');
  });

  test('comes out the same each time', () => {
    expect(planOf(yardWith())).toEqual(planOf(yardWith()));
  });
});

describe('a job that cannot be planned', () => {
  test('names what is missing', () => {
    expect(problemsOf(yardWith(), 'j9')[0]).toMatchObject({ kind: 'value/missing', where: { field: 'job' } });
    const noProduct = problemsOf(yardWith({ job: { productId: 'p9' } }))[0];
    expect(noProduct).toMatchObject({ kind: 'value/missing', where: { field: 'product of June iron' } });
    const noApplicator = problemsOf(yardWith({ job: { applicatorId: 'a9' } }))[0];
    expect(noApplicator).toMatchObject({
      kind: 'value/missing',
      where: { field: 'applicator of June iron' },
    });
  });

  test('is refused over a label limit, under a pesticide label’s carrier and without a swath', () => {
    const over = yardWith({ product: { mostRateLPerM2: flOzPer1000Ft2(2) } });
    expect(problemsOf(over)[0]?.kind).toBe('value/rate-over-label');
    const under = yardWith({ product: { use: 'pesticide', leastCarrierLPerM2: galPer1000Ft2(2) } });
    expect(problemsOf(under)[0]?.kind).toBe('value/carrier-under-label');
    const noSwath = yardWith({ applicator: { swathM: 0 } });
    expect(problemsOf(noSwath)[0]).toMatchObject({
      kind: 'value/not-positive',
      where: { field: 'Swath of Back tank' },
    });
  });

  test('with no ground to treat says so by its name', () => {
    for (const yard of [yardWith({ outlines: [] }), yardWith({ job: { zoneIds: [] } })]) {
      expect(problemsOf(yard)[0]).toMatchObject({
        kind: 'plan/nothing-to-treat',
        where: { thing: 'June iron' },
      });
    }
  });

  test('passes on what is wrong with an outline', () => {
    const [a, b, c, d] = tracedRing(FRONT.outer) as [YardPoint, YardPoint, YardPoint, YardPoint];
    const bow = { ...FRONT, outer: straight([a, c, b, d]) };
    expect(problemsOf(yardWith({ outlines: [bow] }))[0]?.kind).toBe('shape/self-crossing');
  });
});

test('a plan that is stopped half way says so', () => {
  const planned = planJob(yardWith(), 'j1', { isCancelled: () => true });
  expect(planned.ok ? '' : planned.problems[0].kind).toBe('plan/cancelled');
});
