import { describe, expect, test } from 'vitest';
import { covarianceOf, sigmaOf, sigmaOfSum, spreadOfSum, timesSpread } from '../../../core/area/index.ts';
import type { Ring } from '../../../core/spaces.ts';
import { FOOT_M, SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import type { Outline, Picture } from '../../../core/yard.ts';
import { resolveZones } from '../../../core/zones/index.ts';
import { groundOf, outline, points, rect, spreadOf } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomStar, seededRandom } from '../../support/randomYards.ts';

function zonesOf(outlines: readonly Outline[], sigmaM: number | null, pictures: readonly Picture[] = []) {
  const resolved = resolveZones({ ...groundOf(outlines, sigmaM), pictures });
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems[0]));
  return resolved.value.zones;
}

const sigmaOfRing = (ring: Ring, sigmaM: number): number =>
  zonesOf([outline('zone', 'lawn', ring)], sigmaM)[0]?.sigmaM2 ?? Number.NaN;

describe('corners with errors of their own', () => {
  test('a rectangle is out by σ times its diagonal', () => {
    expectNear(sigmaOfRing(rect(0, 0, 30, 40), 0.1), 5, 1e-9, 'm²'); // σ √(a² + b²) = 0.1 · 50
    // 100 × 50 ft, σ 0.5 ft: 0.5 √(100² + 50²) = 55.90 ft², 1.118 % of 5,000
    const sigmaFt2 = sigmaOfRing(rect(0, 0, 100 * FOOT_M, 50 * FOOT_M), 0.5 * FOOT_M) / SQUARE_FOOT_M2;
    expectNear(sigmaFt2, 55.9, 0.005, 'ft²');
    expectNear((100 * sigmaFt2) / 5000, 1.118, 0.0005, '%');
  });

  test('any polygon is out by what the coordinate formula says', () => {
    const random = seededRandom(3);
    for (let run = 0; run < 50; run++) {
      const ring = randomStar(random, 3 + (run % 20), { xM: 3, yM: -8 }, between(random, 5, 40), 0.6);
      // σ_A² = ¼ Σ[(x_{i+1} - x_{i-1})² + (y_{i+1} - y_{i-1})²] σ² (Chrisman & Yandell 1988, from memory; it is the
      // derivative of the shoelace formula)
      const squares = ring.reduce((sum, _, i) => {
        const [before, after] = [ring.at(i - 1), ring[(i + 1) % ring.length]];
        return (
          sum + ((after?.xM ?? 0) - (before?.xM ?? 0)) ** 2 + ((after?.yM ?? 0) - (before?.yM ?? 0)) ** 2
        );
      }, 0);
      const expected = 0.5 * 0.07 * Math.sqrt(squares);
      // The grid moves each corner by up to half a micrometre.
      expectNear(sigmaOfRing(ring, 0.07), expected, 1e-6 * expected, `m² of run ${run}`);
    }
  });
});

const [a, b, c, d] = points([-300, 200], [300, 200], [300, -200], [-300, -200]);
if (!a || !b || !c || !d) throw new Error('four corners');
const picture: Picture = {
  id: 'p',
  name: 'plan.png',
  imageHash: '',
  mediaType: 'image/png',
  widthPx: 600,
  heightPx: 400,
  placement: { kind: 'georeferenced', crs: 'EPSG:32613', corners: [a, b, c, d] },
  attribution: '',
  cornerSigmaM: 1e-9,
  scaleSigma: 0.004,
};
const traced = (name: string, ring: Ring): Outline => ({
  ...outline('zone', name, ring),
  placing: { by: 'picture', pictureId: 'p', sigmaM: null },
});

describe('errors common to all corners', () => {
  test('a shift of all of them leaves an area as it is, and a scale changes it by twice as much', () => {
    const ring = randomStar(seededRandom(4), 9, { xM: 40, yM: -25 }, 30, 0.5);
    const [zone] = zonesOf([traced('lawn', ring)], null, [picture]);
    const spread = zone?.spread ?? { errors: [] };
    // A shift is every point moved alike: the sum of the gradient over the points.
    const points = spread.errors.filter(({ cause }) => typeof cause !== 'string');
    const shift = points.reduce((sum, { eastM2, sigma }) => sum + eastM2 / sigma, 0);
    expectNear(shift, 0, 1e-6, 'm² a metre'); // 0: area does not depend on where it lies
    // 2 s A, to first order of (1 + s)²
    expectNear(zone?.sigmaM2 ?? -1, 2 * 0.004 * (zone?.treatedAreaM2 ?? 0), 1e-6, 'm²');
  });

  test('published areas and their ± follow from their precision', () => {
    // J. Mahun, Open Access Surveying, self-study Traverse Area (1) and (2): 38,970 ± 5 ft² at 1/11,300 and
    // 250,550 ± 20 ft² at 1/17,300 (area × precision, rounded up: inferred from the numbers). As a scale, which an area
    // has twice, that is half the precision.
    const rings: readonly (readonly [Ring, number, number, number])[] = [
      [
        points(
          [2215.89, 1541.207],
          [2336.574, 1373.915],
          [2350.205, 1299.818],
          [2523.212, 1343.189],
          [2359.08, 1569.36],
        ),
        11_300,
        38_970,
        5,
      ],
      [points([1000, 600], [1209.288, 254.542], [566.876, 97.543], [397.969, 470.303]), 17_300, 250_550, 20],
    ];
    for (const [ringFt, precision, areaFt2, plusFt2] of rings) {
      const ring = ringFt.map(({ xM, yM }) => ({ xM: xM * FOOT_M, yM: yM * FOOT_M }));
      const scaled = { ...picture, scaleSigma: 1 / (2 * precision) };
      const [zone] = zonesOf([traced('parcel', ring)], null, [scaled]);
      expectNear((zone?.treatedAreaM2 ?? 0) / SQUARE_FOOT_M2, areaFt2, plusFt2, 'ft²'); // as published
      const sigmaFt2 = (zone?.sigmaM2 ?? Number.NaN) / SQUARE_FOOT_M2;
      expectNear(sigmaFt2, areaFt2 / precision, 0.01, 'ft²'); // 3.4 and 14.5 ft²
      expect(sigmaFt2).toBeLessThan(plusFt2); // published rounded up
    }
  });

  test('a zone half traced over a picture has the picture’s scale in its half only', () => {
    const drive = traced('drive', rect(0, -1, 12, 22));
    const outlines = [
      { ...drive, kind: 'hardscape' as const },
      outline('zone', 'lawn', rect(-10, 0, 20, 20)),
    ];
    const [lawn] = zonesOf(outlines, 1e-9, [picture]);
    // Left are 10 m × 20 m west of the drive's west edge, which is on the picture's middle: a scale moves it by nothing.
    expectNear(lawn?.sigmaM2 ?? -1, 0, 1e-6, 'm²'); // s · 20 m · 0 m
    const moved = { ...drive, outer: { kind: 'corners' as const, corners: rect(5, -1, 12, 22) } };
    const [wider] = zonesOf([{ ...moved, kind: 'hardscape' as const }, outlines[1] as Outline], 1e-9, [
      picture,
    ]);
    expectNear(wider?.sigmaM2 ?? -1, 0.004 * 20 * 5, 1e-6, 'm²'); // s · 20 m of edge · 5 m from the middle
  });

  test('a scale that is not stated is named and not in the ±', () => {
    const unsaid = { ...picture, cornerSigmaM: 0.1, scaleSigma: null };
    const [zone] = zonesOf([traced('lawn', rect(0, 0, 30, 40))], null, [unsaid]);
    expectNear(zone?.sigmaM2 ?? -1, 5, 1e-9, 'm²'); // σ times the diagonal, as without a picture
    expect(zone?.spread.unstatedScales).toEqual(['p']);
  });
});

describe('zones along one edge', () => {
  const west = outline('zone', 'west', rect(0, 0, 10, 10));
  const east = outline('zone', 'east', rect(10, 0, 10, 10));

  test('have errors that go against one another, so that the sum is surer than its parts', () => {
    // van Oort et al. 2005, Forest Science 51(4):347-356: a vertex two polygons share gives them a covariance of
    // opposite sign. By hand: at (10, 0) the west lawn has the gradient (5, -5), the east one (-5, -5), and at (10, 10)
    // (5, 5) and (-5, 5): covariance 2 (-25 + 25) σ² = 0 for squares; for lawns 30 m high and 10 m wide
    // 2 (-15² + 5²) σ² = -400 σ².
    const [first, second] = zonesOf(
      [outline('zone', 'w', rect(0, 0, 10, 30)), outline('zone', 'e', rect(10, 0, 10, 30))],
      0.1,
    );
    if (!first || !second) throw new Error('two zones');
    expectNear(covarianceOf(first.spread, second.spread), -400 * 0.01, 1e-9, 'm⁴');
    const [one, other] = [first.sigmaM2 ?? Number.NaN, second.sigmaM2 ?? Number.NaN];
    const sum = sigmaOfSum([first.spread, second.spread]) ?? Number.NaN;
    expectNear(sum ** 2, one ** 2 + other ** 2 - 2 * 4, 1e-9, 'm⁴'); // Var(A + B) = Var A + Var B + 2 Cov
    expect(sum).toBeLessThan(Math.hypot(one, other)); // the root of the sum of squares is too much
  });

  test('are together as sure as one zone of the same ground', () => {
    const whole = points([0, 0], [10, 0], [20, 0], [20, 10], [10, 10], [0, 10]);
    const spreads = zonesOf([west, east], 0.1).map(({ spread }) => spread);
    expectNear(sigmaOfSum(spreads) ?? -1, sigmaOfRing(whole, 0.1), 1e-9, 'm²'); // the same six corners, one outline
  });
});

test('what is not stated anywhere gives no ±, of one zone and of the sum', () => {
  const [zone] = zonesOf([outline('zone', 'lawn', rect(0, 0, 10, 10))], null);
  expect(zone?.sigmaM2).toBeNull();
  expect(zone?.spread.unstated).toEqual(['lawn']);
  expect(sigmaOfSum([spreadOf('a', 3), spreadOf('b', null)])).toBeNull();
});

test('unrelated areas add by their squares, and so many times an area is as many times as unsure', () => {
  expect(sigmaOfSum([spreadOf('a', 3), spreadOf('b', 4)])).toBe(5); // 3-4-5 triangle
  expect(sigmaOf(timesSpread(spreadOf('a', 3), 2))).toBe(6); // 2 × 3
  expect(spreadOfSum([])).toEqual({ errors: [], unstated: [], unstatedScales: [] });
});
