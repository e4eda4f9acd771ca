import { beforeAll, expect, test } from 'vitest';
import { compareYards } from '../../core/compare/index.ts';
import { emptyYard } from '../../core/edits/index.ts';
import type { Yard } from '../../core/yard.ts';
import { AWKWARD } from '../support/awkwardYards.ts';
import { expectNear } from '../support/expectNear.ts';
import { type GeosNetArea, startGeos } from '../support/geosNetArea.ts';
import { type RandomYard, seededRandom, yardOutlines } from '../support/randomYards.ts';

const PAIRS_PER_FAMILY = 40;
/** Design, section 15: net area against a second kernel, as part of the larger of the two grounds. */
const PROMISE = 1e-6;

let geos: GeosNetArea;
beforeAll(async () => {
  geos = await startGeos();
});

function yardOf(yard: RandomYard): Yard {
  return { ...emptyYard('Yard', { kind: 'loose' }, 'metric', '2026-05-01'), outlines: yardOutlines(yard) };
}

test.each(Object.entries(AWKWARD))(
  `${PAIRS_PER_FAMILY} pairs of yards, %s, changed as GEOS says`,
  (_family, make) => {
    let compared = 0;
    for (let seed = 1; seed <= PAIRS_PER_FAMILY; seed++) {
      const [before, after] = [make(seededRandom(seed)), make(seededRandom(seed + 1000))];
      const comparison = compareYards(yardOf(before), yardOf(after));
      // Bow-ties and the like are refused by name; their pairs are not compared.
      if (!comparison.ok) continue;
      const { turf, gross } = comparison.value.all;
      const [grossBeforeM2, grossAfterM2] = [geos.netAreaM2(before.zone, []), geos.netAreaM2(after.zone, [])];
      const slackM2 = PROMISE * Math.max(grossBeforeM2, grossAfterM2);
      const unit = `m² (seed ${seed})`;
      // GEOS 3.13, geos-wasm 3.1.1, all of these: one edge less the other, both ways round.
      expectNear(gross.beforeM2, grossBeforeM2, slackM2, unit);
      expectNear(gross.lostM2, geos.netAreaM2(before.zone, [after.zone]), slackM2, unit);
      expectNear(gross.gainedM2, geos.netAreaM2(after.zone, [before.zone]), slackM2, unit);
      // Turf of both = one zone less all beds, less what of that the other zone does not hold.
      const beds = [...before.beds, ...after.beds];
      const outsideAfterM2 = geos.netAreaM2(before.zone, [...beds, after.zone]);
      const unchangedM2 = geos.netAreaM2(before.zone, beds) - outsideAfterM2;
      expectNear(turf.unchangedM2, unchangedM2, 2 * slackM2, unit);
      expectNear(turf.lostM2, geos.netAreaM2(before.zone, before.beds) - unchangedM2, 2 * slackM2, unit);
      expectNear(turf.gainedM2, geos.netAreaM2(after.zone, after.beds) - unchangedM2, 2 * slackM2, unit);
      compared++;
    }
    counts.push(compared);
  },
);

const counts: number[] = [];

test('most pairs could be compared', () => {
  const all = counts.reduce((sum, count) => sum + count, 0);
  expect(all).toBeGreaterThan((PAIRS_PER_FAMILY * Object.keys(AWKWARD).length) / 2);
});
