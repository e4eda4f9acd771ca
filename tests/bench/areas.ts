/**
 * Times net areas against two other ways on the same yards in one run, and prints times, ratios and how far the
 * areas differ. Run: `node tests/bench/areas.ts`, or with `--quick` for three rounds. Numbers inform, they do not
 * gate.
 */
import * as turf from '@turf/turf';
import * as polyclip from 'polyclip-ts';
import { regionsAreaM2, subtractRegions } from '../../core/kernel/index.ts';
import type { Ring } from '../../core/spaces.ts';
import type { Outline } from '../../core/yard.ts';
import { resolveZones } from '../../core/zones/index.ts';
import { groundOf, outline, region } from '../support/builders.ts';
import { type RandomYard, randomYard, seededRandom } from '../support/randomYards.ts';
import { tidyYard } from '../support/tidyYard.ts';

const ROUNDS = process.argv.includes('--quick') ? 3 : 15;
const WARM_UP = 2;

interface Way {
  readonly name: string;
  /** Net area in m²; the inputs are made ready outside the clock. */
  readonly prepare: (yard: RandomYard) => () => number;
}

type Coordinates = [number, number][][];
const closed = (ring: Ring): Coordinates => [[...ring, ring[0]].map((p) => [p?.xM ?? 0, p?.yM ?? 0])];

/** Shoelace over the rings of a multipolygon, so that no way's own area function is on trial. */
function areaOfCoordinates(polygons: readonly Coordinates[]): number {
  return regionsAreaM2(
    polygons.map((rings) => {
      const [outer = [], ...holes] = rings.map((ring) => ring.slice(0, -1).map(([xM, yM]) => ({ xM, yM })));
      return { outer, holes };
    }),
  );
}

const TURF = '@turf/turf difference';

const WAYS: readonly Way[] = [
  {
    name: 'kernel, one overlay',
    prepare: ({ zone, beds }) => {
      return () => {
        // New regions each time, so that no index made before is found again.
        const [lawn, taken] = [[region([...zone])], beds.map((bed) => region([...bed]))];
        return regionsAreaM2(subtractRegions(lawn, taken));
      };
    },
  },
  {
    name: 'resolveZones, checks included',
    prepare: ({ zone, beds }) => {
      return () => {
        // New outlines each time: nothing checked before is remembered.
        const outlines: Outline[] = [
          outline('zone', 'z', zone),
          ...beds.map((bed, i) => outline('bed', `${i}`, bed)),
        ];
        const resolved = resolveZones(groundOf(outlines, 0.05));
        if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems[0]));
        return resolved.value.zones[0]?.turfAreaM2 ?? Number.NaN;
      };
    },
  },
  {
    name: 'polyclip-ts',
    prepare: ({ zone, beds }) => {
      const [lawn, taken] = [closed(zone), beds.map(closed)];
      return () => areaOfCoordinates(polyclip.difference(lawn, ...taken) as Coordinates[]);
    },
  },
  {
    name: TURF,
    prepare: ({ zone, beds }) => {
      const features = turf.featureCollection([zone, ...beds].map((ring) => turf.polygon(closed(ring))));
      return () => {
        const left = turf.difference(features)?.geometry;
        if (left === undefined) return 0;
        const polygons = left.type === 'Polygon' ? [left.coordinates] : left.coordinates;
        return areaOfCoordinates(polygons as Coordinates[]);
      };
    },
  },
];

const YARDS: readonly (readonly [string, RandomYard])[] = [
  ['200 corners, 40 beds clear', tidyYard(200, 40)],
  ['2,000 corners, 200 beds clear', tidyYard(2000, 200)],
  ['5,000 corners, 500 beds clear', tidyYard(5000, 500)],
  ['60 corners, 30 beds that touch and cross', randomYard(seededRandom(12), 60, 30)],
  ['600 corners, 200 beds that touch and cross', randomYard(seededRandom(12), 600, 200)],
];

let sink = 0;
for (const [name, yard] of YARDS) {
  console.log(`\n${name}`);
  let firstMs = 0;
  let firstM2 = 0;
  const leastOf = new Map<string, number>();
  for (const way of WAYS) {
    try {
      const run = way.prepare(yard);
      const timesMs: number[] = [];
      let areaM2 = 0;
      for (let round = -WARM_UP; round < ROUNDS; round++) {
        const before = performance.now();
        areaM2 = run();
        if (round >= 0) timesMs.push(performance.now() - before);
        sink += areaM2;
      }
      const mean = timesMs.reduce((sum, ms) => sum + ms, 0) / timesMs.length;
      const sd = Math.sqrt(timesMs.reduce((sum, ms) => sum + (ms - mean) ** 2, 0) / timesMs.length);
      const least = Math.min(...timesMs);
      leastOf.set(way.name, least);
      firstMs ||= least;
      firstM2 ||= areaM2;
      console.log(
        `  ${way.name.padEnd(30)} least ${least.toFixed(2).padStart(8)} ms  mean ${mean.toFixed(2).padStart(8)} ± ${sd.toFixed(2)} ms` +
          `  ${(least / firstMs).toFixed(2).padStart(7)} x  area off by ${Math.abs(areaM2 / firstM2 - 1).toExponential(1)}`,
      );
    } catch (thrown) {
      console.log(`  ${way.name.padEnd(30)} gave up: ${String(thrown).slice(0, 80)}`);
    }
  }
  const [own, resolved] = WAYS.map((way) => (leastOf.get(TURF) ?? Number.NaN) / (leastOf.get(way.name) ?? 0));
  console.log(
    `  ${TURF} takes ${own?.toFixed(1)} times the overlay, ${resolved?.toFixed(1)} times resolveZones`,
  );
}
console.log(
  `\n${ROUNDS} rounds each after ${WARM_UP} to warm up; ratios are of least times; sum ${sink.toExponential(3)}`,
);
