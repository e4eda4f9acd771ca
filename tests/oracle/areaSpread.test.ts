import { expect, test } from 'vitest';
import { sigmaOf, sigmaOfSum } from '../../core/area/index.ts';
import { intersectRegions } from '../../core/kernel/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { Outline } from '../../core/yard.ts';
import { partSpreads, resolveZones } from '../../core/zones/index.ts';
import { expectNear } from '../support/expectNear.ts';
import { movedOutlines, placeOf } from '../support/movedOutlines.ts';
import { between, type Random, seededRandom } from '../support/randomYards.ts';
import { type FlatRing, slabAreas } from '../support/slabArea.ts';
import {
  clearYard,
  normal,
  runsAlong,
  type UncertainYard,
  uncertainYard,
} from '../support/uncertainYards.ts';

const YARDS = 32;
const DRAWS = 10_000;
/** Draws that `resolveZones` measures too, so that the truth is the same question. */
const BOTH = 4;
/** What bounds 95 % of a normal distribution. */
const WITHIN = 1.96;

const NAMES = ['first lawn', 'second lawn', 'both lawns', 'one section'] as const;

/** A yard as it may be, all its places and scales drawn at once; `shift` tells where a place went. */
function drawn({ ground, places }: UncertainYard, random: Random): (at: YardPoint) => YardPoint {
  const scales = new Map(
    ground.pictures.map((picture) => [picture, 1 + (picture.scaleSigma ?? Number.NaN) * normal(random)]),
  );
  const went = new Map<string, YardPoint>();
  return (at) => {
    const key = placeOf(at);
    const known = went.get(key);
    if (known !== undefined) return known;
    const place = places.get(key);
    if (place === undefined) throw new Error(`nobody placed ${key}`);
    const { picture, sigmaM } = place;
    const scale = picture === null ? 1 : (scales.get(picture) ?? Number.NaN);
    const middle = picture === null ? at : middleOf(picture.placement);
    const there = {
      xM: middle.xM + scale * (at.xM - middle.xM) + sigmaM * normal(random),
      yM: middle.yM + scale * (at.yM - middle.yM) + sigmaM * normal(random),
    };
    went.set(key, there);
    return there;
  };
}

function middleOf(placement: UncertainYard['ground']['pictures'][number]['placement']): YardPoint {
  if (placement.kind !== 'georeferenced') throw new Error('no corners');
  const [northWest, , southEast] = placement.corners;
  return { xM: (northWest.xM + southEast.xM) / 2, yM: (northWest.yM + southEast.yM) / 2 };
}

function flat(points: readonly YardPoint[]): FlatRing {
  return Float64Array.from(points.flatMap(({ xM, yM }) => [xM, yM]));
}

const cornersOf = ({ outer }: Outline) => (outer.kind === 'corners' ? outer.corners : []);

/** First lawn, second lawn, both, and the part of the first left of the cut line: the ring of the last bit. */
function wantedOf(rings: number): Uint8Array[] {
  const sets = Array.from({ length: 2 ** rings }, (_, set) => set);
  const inFirst = (set: number) => (set & 1) === 1;
  const inSecond = (set: number) => (set & 3) === 2;
  const inHalf = (set: number) => set >= 2 ** (rings - 1);
  const isTurf = (set: number) => (set & ~3 & (2 ** (rings - 1) - 1)) === 0;
  const table = (isWanted: (set: number) => boolean) =>
    Uint8Array.from(sets, (set) => (isWanted(set) ? 1 : 0));
  return [
    table((set) => inFirst(set) && isTurf(set)),
    table((set) => inSecond(set) && isTurf(set)),
    table((set) => (inFirst(set) || inSecond(set)) && isTurf(set)),
    table((set) => inFirst(set) && isTurf(set) && inHalf(set)),
  ];
}

/** All ground to the left of a line, as far as a yard goes. */
function halfPlane(from: YardPoint, to: YardPoint): YardPoint[] {
  const lengthM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
  const [ux, uy] = [(to.xM - from.xM) / lengthM, (to.yM - from.yM) / lengthM];
  const at = (alongM: number, leftM: number): YardPoint => ({
    xM: from.xM + alongM * ux - leftM * uy,
    yM: from.yM + alongM * uy + leftM * ux,
  });
  return [at(-200, 0), at(200, 0), at(200, 200), at(-200, 200)];
}

interface Tally {
  readonly within: number[];
  readonly squares: number[];
}

function tally(yard: UncertainYard, seed: number): { tally: Tally; sigmas: number[]; areas: number[] } {
  const random = seededRandom(1000 + seed);
  const { ground } = yard;
  const resolved = resolveZones(ground);
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems[0]));
  const [first, second] = resolved.value.zones;
  if (first === undefined || second === undefined) throw new Error('two lawns were drawn');

  const turn = between(random, 0, 3);
  const reach = (signM: number): YardPoint => ({
    xM: signM * Math.cos(turn) - Math.sin(turn),
    yM: signM * Math.sin(turn) + Math.cos(turn),
  });
  const cut = { from: reach(-19), to: reach(17) };
  const left = intersectRegions(first.treated, [{ outer: halfPlane(cut.from, cut.to), holes: [] }]);
  const section = partSpreads(
    ground,
    left.map((region) => ({ zoneId: 'first', region })),
    [cut],
  );
  const sigmas = [
    sigmaOf(first.spread),
    sigmaOf(second.spread),
    sigmaOfSum([first.spread, second.spread]),
    sigmaOfSum(section),
  ].map((sigmaM2) => sigmaM2 ?? Number.NaN);

  const rings = ground.outlines.map(cornersOf);
  const wanted = wantedOf(rings.length + 1);
  const areasOf = (shift: (at: YardPoint) => YardPoint, line: readonly YardPoint[]) =>
    slabAreas(
      [...rings.map((ring) => ring.map(shift)), halfPlane(line[0] as YardPoint, line[1] as YardPoint)].map(
        flat,
      ),
      wanted,
    );
  const areas = areasOf((at) => at, [cut.from, cut.to]);
  const counts = { within: NAMES.map(() => 0), squares: NAMES.map(() => 0) };
  for (let draw = 0; draw < DRAWS; draw++) {
    const shift = drawn(yard, random);
    const line = [cut.from, cut.to].map(({ xM, yM }) => ({
      xM: xM + (ground.details.cornerSigmaM ?? Number.NaN) * normal(random),
      yM: yM + (ground.details.cornerSigmaM ?? Number.NaN) * normal(random),
    }));
    const truth = areasOf(shift, line);
    if (draw < BOTH) {
      const again = resolveZones({
        ...ground,
        outlines: movedOutlines(ground.outlines, (_, at) => shift(at)),
      });
      const zones = again.ok ? again.value.zones : [];
      expectNear(zones[0]?.treatedAreaM2 ?? -1, truth[0] ?? 0, 1e-3, `m² of seed ${seed}`); // 300 m of edges on a grid of 1 µm
      expectNear(zones[1]?.treatedAreaM2 ?? -1, truth[1] ?? 0, 1e-3, `m² of seed ${seed}`);
    }
    truth.forEach((areaM2, i) => {
      const missM2 = areaM2 - (areas[i] ?? Number.NaN);
      counts.squares[i] = (counts.squares[i] ?? 0) + missM2 ** 2;
      if (Math.abs(missM2) <= WITHIN * (sigmas[i] ?? Number.NaN))
        counts.within[i] = (counts.within[i] ?? 0) + 1;
    });
  }
  return { tally: counts, sigmas, areas };
}

/** For each area, how many percent of the draws its 95 % interval covers. */
function covered(yard: UncertainYard, seed: number): number[] {
  const { tally: counts, sigmas, areas } = tally(yard, seed);
  const percents = counts.within.map((within) => (100 * within) / DRAWS);
  if (process.env.SHOW_DRAWS !== undefined) {
    const lines = NAMES.map((name, i) => {
      const spreadM2 = Math.sqrt((counts.squares[i] ?? 0) / DRAWS);
      return `${name} ${areas[i]?.toFixed(1)} ± ${sigmas[i]?.toFixed(2)}, drawn ± ${spreadM2.toFixed(2)}, ${percents[i]?.toFixed(2)} %`;
    });
    console.log(`${seed}: ${lines.join('; ')}`);
  }
  return percents;
}

test(`the 95 % interval covers the area in 94 to 96 % of ${DRAWS} draws, on each of ${YARDS} yards`, () => {
  for (let seed = 1; seed <= YARDS; seed++) {
    covered(clearYard(seededRandom(seed)), seed).forEach((percent, i) => {
      // Design, section 15: 94 to 96 %. 10,000 draws of 95 % scatter by 0.22 % themselves.
      expect(percent, `${NAMES[i]} of seed ${seed}`).toBeGreaterThan(94);
      expect(percent, `${NAMES[i]} of seed ${seed}`).toBeLessThan(96);
    });
  }
}, 240_000);

test('where a drive runs along a lawn’s edge within its error, the interval is a little too narrow', () => {
  // Either may bound the ground, which first order cannot know: 93.5 % of the draws of this yard, from one run.
  const yard = uncertainYard(seededRandom(31));
  expect(runsAlong(yard)).toBe(true);
  const [, second = 0] = covered(yard, 31);
  expect(second).toBeGreaterThan(92.5);
  expect(second).toBeLessThan(95);
});
