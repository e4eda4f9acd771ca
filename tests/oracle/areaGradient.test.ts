import { describe, expect, test } from 'vitest';
import { newOutline } from '../../core/edits/index.ts';
import { placedPointsOf } from '../../core/area/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { Outline, Traced } from '../../core/yard.ts';
import { resolveZones } from '../../core/zones/index.ts';
import { groundOf, outline, rect } from '../support/builders.ts';
import { expectNear } from '../support/expectNear.ts';
import { movedOutlines, placeOf } from '../support/movedOutlines.ts';
import { between, randomStar, seededRandom, yardOutlines } from '../support/randomYards.ts';

/** Every σ 1 m, so that the errors of a zone are its gradient. */
const SIGMA_M = 1;
/** Far above the kernel's grid, far below any edge that matters. */
const STEP_M = 1e-3;

function treatedM2(outlines: readonly Outline[]): readonly number[] {
  const resolved = resolveZones(groundOf(outlines, SIGMA_M));
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems[0]));
  return resolved.value.zones.map((zone) => zone.treatedAreaM2);
}

/** The worst miss of the gradient against central differences, over all zones, points and both directions. */
function worstMiss(outlines: readonly Outline[]): { missM: number; tried: number; zones: number } {
  const resolved = resolveZones(groundOf(outlines, SIGMA_M));
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems[0]));
  const spreads = resolved.value.zones.map(
    ({ spread }) =>
      new Map(
        spread.errors.flatMap((error) => {
          return typeof error.cause === 'string' ? [] : [[placeOf(error.cause.at), error] as const];
        }),
      ),
  );
  const keys = new Set(outlines.flatMap((each) => placedPointsOf(each).flat()).map(({ at }) => placeOf(at)));
  let missM = 0;
  let tried = 0;
  for (const key of keys) {
    for (const [dx, dy] of [
      [STEP_M, 0],
      [0, STEP_M],
    ] as const) {
      const shifted = (sign: number) =>
        treatedM2(
          movedOutlines(outlines, (other, at): YardPoint => {
            return other === key ? { xM: at.xM + sign * dx, yM: at.yM + sign * dy } : at;
          }),
        );
      const [more, less] = [shifted(1), shifted(-1)];
      spreads.forEach((errors, zone) => {
        const slope = ((more[zone] ?? 0) - (less[zone] ?? 0)) / (2 * STEP_M);
        const error = errors.get(key);
        const ours = (dx > 0 ? error?.eastM2 : error?.northM2) ?? 0;
        missM = Math.max(missM, Math.abs(slope - ours));
        tried++;
      });
    }
  }
  return { missM, tried, zones: spreads.length };
}

/**
 * In m² a metre, of gradients of some ten. A corner on the grid is off by up to half a micrometre and turns the edges
 * at it: 20 m of edge by 1 µm over a difference of 2 mm are 0.01; a corner made by an overlay bends by its square.
 */
const TOLERANCE = 0.02;

describe('the gradient of a zone’s treated area is what moving each point by a millimetre shows', () => {
  test('two lawns along one edge, a drive across both, beds that cross', () => {
    const outlines = [
      outline('zone', 'west', rect(0, 0, 20, 15)),
      outline('zone', 'east', [
        { xM: 20, yM: 0 },
        { xM: 41, yM: -2 },
        { xM: 38, yM: 17 },
        { xM: 20, yM: 15 },
      ]),
      outline('hardscape', 'drive', [
        { xM: 8, yM: -5 },
        { xM: 12, yM: -5 },
        { xM: 33, yM: 22 },
        { xM: 29, yM: 22 },
      ]),
      outline('bed', 'one', rect(2, 2, 4, 4)),
      outline('bed', 'two', rect(4.5, 4.5, 5, 3)),
      outline('keep-off', 'strip', rect(-1, 10, 8, 3)),
    ];
    const { missM, tried, zones } = worstMiss(outlines);
    expect([zones, tried]).toEqual([2, 2 * 2 * 22]); // 24 corners, of which (20, 0) and (20, 15) are two outlines' each
    expectNear(missM, 0, TOLERANCE, 'm² a metre');
  });

  test('60 random yards with beds apart, overlapping, across the edge, and two lawns that overlap', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const random = seededRandom(seed);
      const zone = randomStar(random, 5 + (seed % 9), { xM: 0, yM: 0 }, 20, 0.4);
      const second = randomStar(random, 6, { xM: between(random, 10, 30), yM: 3 }, 14, 0.4);
      const beds = Array.from({ length: seed % 5 }, () =>
        randomStar(random, 5, { xM: between(random, -15, 15), yM: between(random, -15, 15) }, 6, 0.5),
      );
      const outlines = [...yardOutlines({ zone, beds }), outline('zone', 'second', second)];
      expectNear(worstMiss(outlines).missM, 0, TOLERANCE, `m² a metre, seed ${seed}`);
    }
  }, 60_000);

  test('a round lawn, an oval bed, an arc and a smooth run across edges, and a bed over a round one', () => {
    const arcs: Traced = {
      kind: 'corners',
      corners: [
        { xM: 6, yM: -14, run: { kind: 'arc', via: { xM: 12, yM: -16 } } },
        { xM: 18, yM: -13 },
        { xM: 17, yM: 2, run: { kind: 'smooth' } },
        { xM: 11, yM: 5, run: { kind: 'smooth' } },
        { xM: 5, yM: 1 },
      ],
    };
    const oval: Traced = {
      kind: 'ellipse',
      centre: { xM: -4, yM: 3 },
      halfLengthM: 4,
      halfWidthM: 2,
      bearingDeg: 35,
    };
    const outlines = [
      newOutline({
        id: 'r',
        kind: 'zone',
        name: 'round',
        outer: { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 12 },
      }),
      newOutline({ id: 's', kind: 'zone', name: 'swung', outer: arcs }),
      newOutline({ id: 'o', kind: 'bed', name: 'oval', outer: oval }),
      newOutline({
        id: 'p',
        kind: 'water',
        name: 'pond',
        outer: { kind: 'circle', centre: { xM: 11, yM: -4 }, radiusM: 2.5 },
      }),
      outline('bed', 'over', rect(-3, 4, 4, 4)),
    ];
    expectNear(worstMiss(outlines).missM, 0, TOLERANCE, 'm² a metre');
  });

  test('strips kept off all round and along one edge, inside a lawn and round a bed', () => {
    const lawn = rect(0, 0, 30, 20).map((corner, i) => (i === 1 ? { ...corner, keepOffM: 2.5 } : corner));
    const outlines = [
      { ...outline('zone', 'lawn', lawn), keepOffM: 1 },
      {
        ...outline('water', 'pond', [
          { xM: 8, yM: 7 },
          { xM: 15, yM: 8 },
          { xM: 13, yM: 14 },
        ]),
        keepOffM: 1.5,
      },
      newOutline({
        id: 'b',
        kind: 'bed',
        name: 'bed',
        keepOffM: 0.8,
        outer: { kind: 'circle', centre: { xM: 22, yM: 10 }, radiusM: 2 },
      }),
    ];
    expectNear(worstMiss(outlines).missM, 0, TOLERANCE, 'm² a metre');
  });
});
