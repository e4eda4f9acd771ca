/**
 * Times whole ground plans on seeded shapes and prints how good they are. Run: `npm run bench:plan`, or with
 * `--quick` for one round each. Numbers inform, they do not gate.
 */
import { subtractRegions } from '../../core/kernel/index.ts';
import { planGround } from '../../core/plan/index.ts';
import type { Region } from '../../core/spaces.ts';
import { rect, region, regularPolygon } from '../support/builders.ts';
import { resolvedOf } from '../support/randomGround.ts';
import { between, randomComb, randomStar, seededRandom } from '../support/randomYards.ts';
import { planRequest } from '../support/planRequest.ts';

const ROUNDS = process.argv.includes('--quick') ? 1 : 5;

interface Shape {
  readonly name: string;
  readonly ground: readonly Region[];
  readonly loadAreaM2: number;
  readonly swathM: number;
}

/** Round beds that keep `gapM` from each other, in a box. */
function beds(seed: number, count: number, widthM: number, heightM: number, radiusM: number, gapM: number) {
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
  return made.map((bed) => region(regularPolygon(bed, bed.radiusM, 10)));
}

function shapes(): Shape[] {
  const random = seededRandom(2026);
  const star = randomStar(random, 40, { xM: 20, yM: 20 }, 22, 0.35);
  const box = (widthM: number, heightM: number, holes: readonly Region[]) =>
    subtractRegions([region(rect(0, 0, widthM, heightM))], holes);
  return [
    { name: 'rectangle 1,000 m²', ground: box(40, 25, []), loadAreaM2: 100, swathM: 1.8 },
    {
      name: 'yard 1,000 m², 20 beds',
      ground: box(40, 28, beds(5, 20, 40, 28, 1, 2)),
      loadAreaM2: 100,
      swathM: 1.8,
    },
    { name: 'smooth star', ground: [region(star)], loadAreaM2: 100, swathM: 1.8 },
    { name: 'comb of 6', ground: [region(randomComb(random, 6, 44, 24))], loadAreaM2: 60, swathM: 1 },
    {
      name: '1 ha, 30 beds',
      ground: box(100, 100, beds(6, 30, 100, 100, 3, 4)),
      loadAreaM2: 1500,
      swathM: 3,
    },
    {
      name: '1 ha, 100 beds',
      ground: box(100, 100, beds(7, 100, 100, 100, 1.5, 3)),
      loadAreaM2: 800,
      swathM: 1.8,
    },
    {
      name: '5 ha, 100 beds',
      ground: box(250, 200, beds(8, 100, 250, 200, 4, 6)),
      loadAreaM2: 2500,
      swathM: 3,
    },
  ];
}

const head = [
  'shape',
  'sections',
  'passes',
  'cut',
  'covered %',
  'twice %',
  'outside %',
  'on',
  'walk',
  'min ms',
  'mean ms',
  'sd',
];
const rows = shapes().map(({ name, ground, loadAreaM2, swathM }) => {
  const resolved = resolvedOf({ Yard: ground });
  const run = () => planGround(resolved, planRequest({ loadAreaM2, swathM, markM: 0.1 }));
  const timesMs: number[] = [];
  let result = run();
  for (let round = 0; round < ROUNDS; round++) {
    const startMs = performance.now();
    result = run();
    timesMs.push(performance.now() - startMs);
  }
  if (!result.ok) return [name, ...result.problems.map((problem) => problem.kind)];
  const plan = result.value;
  const { treatedM2, missedM2, twiceM2, outsideM2 } = plan.coverage;
  const swaths = treatedM2 / swathM;
  const cutM = plan.cutLines.reduce(
    (sum, l) => sum + Math.hypot(l.to.xM - l.from.xM, l.to.yM - l.from.yM),
    0,
  );
  const fairM = (plan.sections.length - 1) * Math.sqrt(treatedM2 / plan.sections.length);
  const meanMs = timesMs.reduce((sum, ms) => sum + ms, 0) / timesMs.length;
  const sdMs = Math.sqrt(timesMs.reduce((sum, ms) => sum + (ms - meanMs) ** 2, 0) / timesMs.length);
  return [
    name,
    `${plan.sections.length}`,
    `${plan.passes.length}`,
    (cutM / fairM).toFixed(3),
    (100 - (100 * missedM2) / treatedM2).toFixed(2),
    ((100 * twiceM2) / treatedM2).toFixed(2),
    ((100 * outsideM2) / treatedM2).toFixed(2),
    (plan.onLengthM / swaths).toFixed(3),
    ((plan.onLengthM + plan.offLengthM) / swaths).toFixed(3),
    Math.min(...timesMs).toFixed(0),
    meanMs.toFixed(0),
    sdMs.toFixed(0),
  ];
});

console.log('cut = cut length / ((sections - 1) sqrt(area / sections)); on, walk = length / (area / swath)');
const widths = head.map((title, i) => Math.max(title.length, ...rows.map((row) => row[i]?.length ?? 0)));
for (const row of [head, ...rows]) {
  console.log(
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0))).join('  '),
  );
}
