import { describe, expect, test } from 'vitest';
import { intersectRegions, regionAreaM2, regionsAreaM2 } from '../../../core/kernel/index.ts';
import { type GroundPlan, planGround, type PlanRequest } from '../../../core/plan/index.ts';
import type { Region } from '../../../core/spaces.ts';
import { lShape, moved, rect, region, regularPolygon } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { planRequest } from '../../support/planRequest.ts';
import { randomGround, resolvedOf } from '../../support/randomGround.ts';

const REQUEST = planRequest({ loadAreaM2: 100, swathM: 1.8, paceMPerS: 0.9 });
const FRONT = [region(lShape(30, 20, 12, 9), rect(4, 4, 3, 2))];
const BACK = [region(moved(rect(0, 0, 18, 9), 0.3, 50, 0)), region(rect(80, 0, 8, 6))];

function plan(
  zones: Readonly<Record<string, readonly Region[]>>,
  request: Partial<PlanRequest> = {},
): GroundPlan {
  const result = planGround(resolvedOf(zones), { ...REQUEST, ...request });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

function problemOf(zones: Readonly<Record<string, readonly Region[]>>, request: Partial<PlanRequest>) {
  const result = planGround(resolvedOf(zones), { ...REQUEST, ...request });
  return result.ok ? undefined : result.problems[0].kind;
}

describe('a plan of two zones', () => {
  const ground = plan({ Front: FRONT, Back: BACK });

  test('letters the zones in the order drawn and numbers their sections', () => {
    expect(new Set(ground.sections.map((section) => section.id[0]))).toEqual(new Set(['A', 'B'])); // two zones
    for (const section of ground.sections)
      expect(section.zoneName).toBe(section.id[0] === 'A' ? 'Front' : 'Back');
  });

  test('numbers the passes through, section by section', () => {
    expect(ground.passes.map((pass) => pass.order)).toEqual(ground.passes.map((_, i) => i + 1)); // 1, 2, 3 …
    const blocks = ground.passes.map((pass) => pass.sectionId).filter((id, i, all) => id !== all[i - 1]);
    expect(new Set(blocks).size).toBe(blocks.length); // no section is come back to
  });

  test('adds up: lengths, time, areas', () => {
    const { sectionFigures } = ground;
    const sum = (of: (figures: (typeof sectionFigures)[0]) => number): number =>
      sectionFigures.reduce((total, figures) => total + of(figures), 0);
    expectNear(
      ground.onLengthM,
      sum((f) => f.onLengthM),
      1e-9,
      'm',
    ); // the sections' own
    expectNear(
      ground.offLengthM,
      sum((f) => f.offLengthM),
      1e-9,
      'm',
    ); // the sections' own
    expectNear(ground.timeS, (ground.onLengthM + ground.offLengthM) / 0.9, 1e-9, 's'); // at 0.9 m/s
    const passesM = ground.passes.reduce((total, pass) => total + pass.lengthM, 0);
    expectNear(ground.onLengthM, passesM, 1e-9, 'm'); // the passes' own
    const treatedM2 = regionsAreaM2([...FRONT, ...BACK]);
    expectNear(
      sum((f) => f.areaM2),
      treatedM2,
      1e-6,
      'm²',
    ); // sections sum to the ground
    const { onceM2, twiceM2, missedM2 } = ground.coverage;
    expectNear(onceM2 + twiceM2 + missedM2, treatedM2, 1e-6, 'm²'); // the balance
  });

  test('is the same every time', () => {
    expect(plan({ Front: FRONT, Back: BACK })).toEqual(ground);
  });

  test('covers nearly all of it and throws nearly nothing out', () => {
    const { treatedM2, missedM2, outsideM2 } = ground.coverage;
    expect(missedM2).toBeLessThan(0.01 * treatedM2); // the aim: covered 99 %
    expect(outsideM2).toBeLessThan(0.01 * treatedM2); // the aim: outside 1 %
  });

  test('keeps to a heading that was asked for', () => {
    const asked = plan({ Front: FRONT }, { heading: { kind: 'picked', deg: 30 } });
    for (const figures of asked.sectionFigures) expectNear(figures.headingDeg, 30, 1e-9, '°'); // as asked
    for (const { line, kind } of asked.passes) {
      if (kind !== 'lane') continue;
      const [from, to] = [line[0], line.at(-1)];
      const deg =
        (Math.atan2((to?.xM ?? 0) - (from?.xM ?? 0), (to?.yM ?? 0) - (from?.yM ?? 0)) * 180) / Math.PI;
      expectNear(((deg % 180) + 180) % 180, 30, 1e-6, '°'); // 0 = north, 90 = east
    }
  });
});

test('treats each section within half a swath of its border', () => {
  const ground = plan({ Front: FRONT });
  for (const section of ground.sections) {
    for (const pass of ground.passes.filter((p) => p.sectionId === section.id)) {
      for (const point of pass.line) {
        const dot = region(regularPolygon(point, 0.001, 8));
        expect(regionsAreaM2(intersectRegions([dot], [section.region]))).toBeGreaterThan(0); // it walks on its own ground
      }
    }
  }
});

test('progress rises to 1 and a stop is heeded at once', () => {
  const told: number[] = [];
  planGround(resolvedOf({ Front: FRONT, Back: BACK }), REQUEST, {
    onProgress: (fraction) => told.push(fraction),
  });
  expect(told).toEqual([...told].sort((a, b) => a - b));
  expect(told.at(-1)).toBe(1); // done
  let asked = 0;
  const stopped = planGround(resolvedOf({ Front: FRONT, Back: BACK }), REQUEST, {
    isCancelled: () => ++asked > 3,
  });
  expect(stopped.ok ? undefined : stopped.problems[0].kind).toBe('plan/cancelled');
});

test('a first plan is handed out whole while a better one is sought, on ground that takes its time', () => {
  const firsts: GroundPlan[] = [];
  const lawn = { Lawn: [region(rect(0, 0, 40, 30), rect(12, 9, 8, 6))] };
  const asked = { ...REQUEST, loadAreaM2: 600 };
  const last = planGround(resolvedOf(lawn), asked, { onBetter: (plan) => firsts.push(plan) });
  expect(firsts.length).toBe(1); // once, before the end
  const [first] = firsts;
  if (first === undefined || !last.ok) throw new Error('no plan');
  const { onceM2, twiceM2, missedM2, treatedM2 } = first.coverage;
  expectNear(onceM2 + twiceM2 + missedM2, treatedM2, 1e-6, 'm²'); // measured: the balance
  expect(first.passes.length).toBe(last.value.passes.length); // the same passes in another order
  const cost = (plan: GroundPlan): number => plan.offLengthM + plan.wetM;
  expect(cost(last.value)).toBeLessThan(cost(first) * 1.05); // the last is as good, or better
  const small: GroundPlan[] = [];
  planGround(resolvedOf({ Bit: [region(rect(0, 0, 15, 10))] }), REQUEST, {
    onBetter: (plan) => small.push(plan),
  });
  expect(small).toEqual([]); // a blink: 150 m² are 46 swath squares
});

describe('what cannot be planned is said', () => {
  test('figures that are none', () => {
    expect(problemOf({ Front: FRONT }, { swathM: 0 })).toBe('value/not-positive');
    expect(problemOf({ Front: FRONT }, { paceMPerS: Number.NaN })).toBe('value/not-positive');
    expect(problemOf({ Front: FRONT }, { loadAreaM2: Infinity })).toBe('value/not-positive');
    expect(problemOf({ Front: FRONT }, { heading: { kind: 'picked', deg: Number.NaN } })).toBe(
      'value/not-a-number',
    );
  });
  test('no ground', () => {
    expect(problemOf({}, {})).toBe('plan/nothing-to-treat');
    expect(problemOf({ Front: [] }, {})).toBe('plan/nothing-to-treat');
  });
  test('a load below one swath square', () => {
    expect(problemOf({ Front: FRONT }, { loadAreaM2: 3 })).toBe('plan/load-below-one-swath-square'); // 1.8² = 3.24
  });
  test('a swath wider than the zone is a warning, and the zone is missed, not sprayed over', () => {
    const ground = plan({ Strip: [region(rect(-20, 0, 10, 1))], Front: FRONT }, { swathM: 1.8 });
    expect(ground.warnings).toEqual([
      { kind: 'plan/swath-wider-than-zone', where: { thing: 'Strip' }, facts: { swathM: 1.8 } },
    ]);
    expect(ground.coverage.missedM2).toBeGreaterThan(10 - 1e-6); // the strip's 10 m²
  });
});

test('a hundred beds end in seconds', () => {
  const beds = Array.from({ length: 100 }, (_, i) =>
    regularPolygon({ xM: 5 + 10 * (i % 10), yM: 5 + 10 * Math.floor(i / 10) }, 1.2 + (i % 7) / 10, 9),
  );
  const ground = plan({ Field: [region(rect(0, 0, 100, 100), ...beds)] }, { loadAreaM2: 800 });
  expect(ground.sections.length).toBe(12); // about 9,600 m² / 800 m² rounded up
  expect(ground.coverage.missedM2).toBeLessThan(0.01 * ground.coverage.treatedM2); // the aim: covered 99 %
});

test('random yards in many pieces are planned whole', () => {
  for (let seed = 30; seed < 40; seed++) {
    const treated = randomGround(seed, 16, 8);
    const areaM2 = regionsAreaM2(treated);
    const ground = plan({ Yard: treated }, { loadAreaM2: areaM2 / 5, swathM: Math.sqrt(areaM2) / 30 });
    const sumM2 = ground.sections.reduce((total, section) => total + regionAreaM2(section.region), 0);
    expectNear(sumM2, areaM2, 1e-8 * areaM2, 'm²'); // sections sum to the ground
  }
});
