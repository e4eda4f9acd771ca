import { beforeAll, describe, expect, test } from 'vitest';
import { findCrossing, regionsAreaM2, subtractRegions } from '../../core/kernel/index.ts';
import { resolveZones } from '../../core/zones/index.ts';
import { AWKWARD } from '../support/awkwardYards.ts';
import { groundOf, region } from '../support/builders.ts';
import { expectNear } from '../support/expectNear.ts';
import { type GeosNetArea, startGeos } from '../support/geosNetArea.ts';
import { seededRandom, yardOutlines } from '../support/randomYards.ts';

const YARDS_PER_FAMILY = 100;
/** Design, section 15: net area against a second kernel. */
const PROMISE = 1e-6;

let geos: GeosNetArea;
beforeAll(async () => {
  geos = await startGeos();
});

describe.each(Object.entries(AWKWARD))('%s', (_family, make) => {
  test(`${YARDS_PER_FAMILY} yards have the net area GEOS finds`, () => {
    for (let seed = 1; seed <= YARDS_PER_FAMILY; seed++) {
      const yard = make(seededRandom(seed));
      const ours = regionsAreaM2(
        subtractRegions(
          [region(yard.zone)],
          yard.beds.map((bed) => region(bed)),
        ),
      );
      const theirs = geos.netAreaM2(yard.zone, yard.beds);
      expectNear(ours, theirs, PROMISE * theirs, `m² (seed ${seed})`); // GEOS 3.13, geos-wasm 3.1.1
    }
  });

  test('so has the resolved zone, wherever its outlines can stand', () => {
    let stood = 0;
    for (let seed = 1; seed <= YARDS_PER_FAMILY / 4; seed++) {
      const whole = make(seededRandom(seed));
      // What crosses itself is refused by name; the rest of such a yard is still resolved.
      const yard = { zone: whole.zone, beds: whole.beds.filter((bed) => findCrossing(bed) === undefined) };
      const resolved = resolveZones(groundOf(yardOutlines(yard)));
      if (!resolved.ok) continue;
      const theirs = geos.netAreaM2(yard.zone, yard.beds);
      expectNear(
        resolved.value.zones[0]?.turfAreaM2 ?? Number.NaN,
        theirs,
        PROMISE * theirs,
        `m² (seed ${seed})`,
      );
      stood++;
    }
    expect(stood).toBeGreaterThan(YARDS_PER_FAMILY / 8); // at least half of them stood
  });
});

test('GEOS itself gives the area one works out by hand', () => {
  const square = [
    { xM: 0, yM: 0 },
    { xM: 10, yM: 0 },
    { xM: 10, yM: 10 },
    { xM: 0, yM: 10 },
  ];
  const bowTie = [
    { xM: 2, yM: 2 },
    { xM: 6, yM: 6 },
    { xM: 6, yM: 2 },
    { xM: 2, yM: 6 },
  ];
  expectNear(geos.netAreaM2(square, []), 100, 1e-12, 'm²'); // 10 * 10
  expectNear(geos.netAreaM2(square, [bowTie]), 92, 1e-12, 'm²'); // less two triangles of 4 * 2 / 2
});
