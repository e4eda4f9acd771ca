import { beforeAll, describe, expect, test } from 'vitest';
import {
  findCrossing,
  GRID_M,
  regionsAreaM2,
  ringPerimeterM,
  signedAreaM2,
  subtractRegions,
} from '../../core/kernel/index.ts';
import type { Ring } from '../../core/spaces.ts';
import { OVERLAP_RULES } from '../../core/yard.ts';
import { resolveZones } from '../../core/zones/index.ts';
import { AWKWARD } from '../support/awkwardYards.ts';
import { groundOf, outline, rect, region } from '../support/builders.ts';
import { expectNear } from '../support/expectNear.ts';
import { type GeosNetArea, startGeos } from '../support/geosNetArea.ts';
import {
  between,
  pick,
  type Random,
  randomStar,
  randomYard,
  seededRandom,
  yardOutlines,
} from '../support/randomYards.ts';

/** With twelve families, and the zones and strips of their own, more than 5,000 yards. */
const YARDS_PER_FAMILY = 420;
const ZONED_YARDS = 60;
const STRIPPED_YARDS = 200;
/** Design, section 15: net area against a second kernel. */
const PROMISE = 1e-6;
/** For a machine that is busy with other things; a yard takes some milliseconds. */
const TIMEOUT_MS = 120_000;

let geos: GeosNetArea;
beforeAll(async () => {
  geos = await startGeos();
});

describe.each(Object.entries(AWKWARD))('%s', (_family, make) => {
  test(
    `${YARDS_PER_FAMILY} yards have the net area GEOS finds`,
    () => {
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
    },
    TIMEOUT_MS,
  );

  test(
    'so has the resolved zone, wherever its outlines can stand',
    () => {
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
    },
    TIMEOUT_MS,
  );
});

describe('a yard in map-sheet coordinates', () => {
  const [eastM, northM] = [500_000, 4_400_000];

  test('brought home has the net area GEOS finds where it lies', () => {
    for (let seed = 1; seed <= ZONED_YARDS; seed++) {
      // To the nanometre that a double has left out there, so that both kernels see the same corners.
      const far = (ring: Ring) => ring.map(({ xM, yM }) => ({ xM: xM + eastM, yM: yM + northM }));
      const home = (ring: Ring) => far(ring).map(({ xM, yM }) => ({ xM: xM - eastM, yM: yM - northM }));
      const { zone, beds } = randomYard(seededRandom(seed), 24, 8);
      const resolved = resolveZones(groundOf(yardOutlines({ zone: home(zone), beds: beds.map(home) })));
      const ours = resolved.ok ? (resolved.value.zones[0]?.turfAreaM2 ?? Number.NaN) : Number.NaN;
      const theirs = geos.netAreaM2(far(zone), beds.map(far));
      expectNear(ours, theirs, PROMISE * theirs, `m² (seed ${seed})`);
    }
  });

  test('left where it lies is refused by name', () => {
    const resolved = resolveZones(groundOf([outline('zone', 'far', rect(eastM, northM, 20, 10))]));
    expect(resolved.ok ? [] : resolved.problems).toMatchObject([
      { kind: 'shape/too-large', where: { outlineId: 'far' } },
    ]);
  });
});

describe.each(OVERLAP_RULES)('several zones over one place, the owner being the %s', (overlapRule) => {
  test(
    `${ZONED_YARDS} yards have the turf GEOS finds for each zone`,
    () => {
      for (let seed = 1; seed <= ZONED_YARDS; seed++) {
        const random = seededRandom(1000 * OVERLAP_RULES.indexOf(overlapRule) + seed);
        const { rings, claims, beds } = zonedYard(random);
        const zones = rings.map((ring, i) => ({
          ...outline('zone', `${i}`, ring),
          claimsOverlaps: claims[i] === true,
        }));
        const ground = groundOf([...zones, ...beds.map((bed, i) => outline('bed', `bed ${i}`, bed))]);
        const resolved = resolveZones({ ...ground, details: { ...ground.details, overlapRule } });
        const sizes = rings.map((ring) => geos.netAreaM2(ring, []));
        /** Of two zones, decided from the rule's words and GEOS's areas. */
        const goesBefore = (a: number, b: number): boolean => {
          if (claims[a] !== claims[b]) return claims[a] === true;
          const [sizeA, sizeB] = [sizes[a] ?? 0, sizes[b] ?? 0];
          const isSame = Math.abs(sizeA - sizeB) < 1e-7;
          if (overlapRule === 'smaller' && !isSame) return sizeA < sizeB;
          if (overlapRule === 'larger' && !isSame) return sizeA > sizeB;
          return overlapRule === 'drawn-last' ? a > b : a < b;
        };
        rings.forEach((ring, i) => {
          const owners = rings.filter((_, other) => other !== i && goesBefore(other, i));
          const theirs = geos.netAreaM2(ring, [...owners, ...beds]);
          const ours = resolved.ok ? (resolved.value.zones[i]?.turfAreaM2 ?? Number.NaN) : Number.NaN;
          // Of the zone as drawn, for what is left may be next to nothing; a grid step along the edge of a small one.
          const slackM2 = Math.max(PROMISE * (sizes[i] ?? 0), GRID_M * ringPerimeterM(ring));
          expectNear(ours, theirs, slackM2, `m² of zone ${i} (seed ${seed})`);
        });
      }
    },
    TIMEOUT_MS,
  );
});

test(
  `${STRIPPED_YARDS} yards with strips kept off have the treated area GEOS finds`,
  () => {
    for (let seed = 1; seed <= STRIPPED_YARDS; seed++) {
      const random = seededRandom(seed);
      const { zone, beds } = randomYard(random, 5 + Math.floor(20 * random()), 5);
      const widths = [zone, ...beds].map(() => (random() < 0.6 ? between(random, 0.05, 4) : null));
      const along = { edge: Math.floor(zone.length * random()), widthM: between(random, 0.1, 5) };
      const outlines = [zone, ...beds].map((ring, i) => {
        const made = outline(i === 0 ? 'zone' : 'water', `${i}`, ring);
        const corners = ring.map((corner, at) =>
          at === along.edge ? { ...corner, keepOffM: along.widthM } : corner,
        );
        const outer = i === 0 ? ({ kind: 'corners', corners } as const) : made.outer;
        return { ...made, outer, keepOffM: widths[i] ?? null };
      });
      const resolved = resolveZones(groundOf(outlines));
      const ours = resolved.ok ? (resolved.value.zones[0]?.treatedAreaM2 ?? Number.NaN) : Number.NaN;
      const edge = [zone[along.edge], zone[(along.edge + 1) % zone.length]] as Ring;
      const theirs = geos.treatedAreaM2(zone, [
        { line: edge, widthM: along.widthM },
        ...(widths[0] == null ? [] : [{ line: [...zone, ...zone.slice(0, 1)], widthM: widths[0] }]),
        ...beds.map((ring, i) => ({ ring, widthM: widths[i + 1] ?? 0 })),
      ]);
      // Round corners are chords up to 1 mm inside the arc: at most that along a full turn at every corner.
      const turns = [zone, ...beds].map((ring, i) => ring.length * (widths[i] ?? 0));
      const arcsM = 2 * Math.PI * (turns.reduce((sum, one) => sum + one, 0) + 2 * along.widthM);
      expectNear(ours, theirs, 1e-3 * arcsM + PROMISE * signedAreaM2(zone), `m² (seed ${seed})`);
    }
  },
  TIMEOUT_MS,
);

/** Zones in twos and threes over one place, some the very same, with beds of every kind over them. */
function zonedYard(random: Random): {
  readonly rings: readonly Ring[];
  readonly claims: readonly boolean[];
  readonly beds: readonly Ring[];
} {
  const { zone, beds } = randomYard(random, 12, 5);
  const rings: Ring[] = [zone];
  while (rings.length < 4) {
    const spot = { xM: between(random, -15, 15), yM: between(random, -15, 15) };
    const other = pick(random, rings);
    rings.push(
      pick(random, [
        () => randomStar(random, 4 + Math.floor(12 * random()), spot, between(random, 3, 30), 0.5),
        () => rect(spot.xM, spot.yM, between(random, 2, 25), between(random, 2, 25)),
        () => other,
        // Next door, along one edge.
        () => [other[1], other[0], { xM: spot.xM * 3, yM: spot.yM * 3 }] as Ring,
      ])(),
    );
  }
  return { rings, claims: rings.map(() => random() < 0.25), beds };
}

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
