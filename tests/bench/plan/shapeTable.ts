import { subtractRegions } from '../../../core/kernel/index.ts';
import type { Region } from '../../../core/spaces.ts';
import { rect, region, regularPolygon } from '../../support/builders.ts';
import { between, randomComb, randomStar, seededRandom } from '../../support/randomYards.ts';
import { type PlanQuality, planQuality } from './planQuality.ts';
import { printTable } from './table.ts';

interface Shape {
  readonly name: string;
  readonly ground: readonly Region[];
  readonly loadAreaM2: number;
  readonly swathM: number;
  /** What its plan should take at most. */
  readonly goalMs?: number;
}

/** A box with round beds that keep `gapM` from each other; some may bite into its edge. */
export function bedded(
  seed: number,
  count: number,
  widthM: number,
  heightM: number,
  radiusM: number,
  gapM: number,
): Region[] {
  const random = seededRandom(seed);
  const made: { xM: number; yM: number; radiusM: number }[] = [];
  // A box too full for the count is left with fewer.
  for (let tries = 0; made.length < count && tries < 100 * count; tries++) {
    const bed = {
      xM: between(random, 0, widthM),
      yM: between(random, 0, heightM),
      radiusM: radiusM * between(random, 0.6, 1.4),
    };
    const isClear = made.every(
      (o) => Math.hypot(o.xM - bed.xM, o.yM - bed.yM) > o.radiusM + bed.radiusM + gapM,
    );
    if (isClear) made.push(bed);
  }
  return subtractRegions(
    [region(rect(0, 0, widthM, heightM))],
    made.map((bed) => region(regularPolygon(bed, bed.radiusM, 10))),
  );
}

function shapes(): Shape[] {
  const random = seededRandom(2026);
  const star = randomStar(random, 40, { xM: 20, yM: 20 }, 22, 0.35);
  const comb = randomComb(random, 6, 44, 24);
  return [
    { name: 'rectangle 1,000 m²', ground: [region(rect(0, 0, 40, 25))], loadAreaM2: 100, swathM: 1.8 },
    {
      name: 'yard 1,000 m², 20 beds',
      ground: bedded(5, 20, 40, 28, 1, 2),
      loadAreaM2: 100,
      swathM: 1.8,
      goalMs: 200,
    },
    { name: 'smooth star', ground: [region(star)], loadAreaM2: 100, swathM: 1.8 },
    { name: 'comb of 6', ground: [region(comb)], loadAreaM2: 60, swathM: 1 },
    { name: '1 ha, 30 beds', ground: bedded(6, 30, 100, 100, 3, 4), loadAreaM2: 1500, swathM: 3 },
    { name: '1 ha, 100 beds', ground: bedded(7, 100, 100, 100, 1.5, 3), loadAreaM2: 800, swathM: 1.8 },
    {
      name: '5 ha, 100 beds',
      ground: bedded(8, 100, 250, 200, 4, 6),
      loadAreaM2: 2500,
      swathM: 3,
      goalMs: 3000,
    },
  ];
}

/** Single shapes, planned a few times each after once to warm up. */
export function printShapes(rounds: number): void {
  console.log(`Single shapes, marks of 0.1 m; least and mean of ${rounds} rounds.\n`);
  const rows = shapes().map(({ name, ground, loadAreaM2, swathM, goalMs }) => {
    const runs = Array.from({ length: rounds + 1 }, () => planQuality(ground, { loadAreaM2, swathM })).slice(
      1,
    );
    const plans = runs.filter((plan) => typeof plan !== 'string');
    const [plan] = plans;
    if (plan === undefined) return [name, `${runs[0]}`];
    const timesMs = plans.map(({ cpuMs }) => cpuMs);
    return [
      name,
      ...cellsOf(plan),
      ...timeCells(timesMs),
      goalMs === undefined ? '' : goalCell(timesMs, goalMs),
    ];
  });
  printTable(
    [
      'ground',
      'sections',
      'passes',
      'cut',
      'covered %',
      'twice %',
      'outside %',
      'on',
      'walk',
      'wet',
      'CPU ms',
      'mean ± sd',
      'goal ms',
    ],
    rows,
  );
}

function cellsOf(plan: PlanQuality): string[] {
  return [
    `${plan.sections}`,
    `${plan.passes}`,
    plan.cut.toFixed(3),
    plan.coveredPercent.toFixed(2),
    plan.twicePercent.toFixed(2),
    plan.outsidePercent.toFixed(2),
    plan.on.toFixed(3),
    plan.walk.toFixed(3),
    plan.wet.toFixed(3),
  ];
}

function timeCells(timesMs: readonly number[]): string[] {
  const mean = timesMs.reduce((sum, ms) => sum + ms, 0) / timesMs.length;
  const sd = Math.sqrt(timesMs.reduce((sum, ms) => sum + (ms - mean) ** 2, 0) / timesMs.length);
  return [Math.min(...timesMs).toFixed(0), `${mean.toFixed(0)} ± ${sd.toFixed(0)}`];
}

function goalCell(timesMs: readonly number[], goalMs: number): string {
  return `${goalMs}, ${Math.min(...timesMs) <= goalMs ? 'reached' : 'not reached'}`;
}
