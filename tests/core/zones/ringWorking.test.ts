import { expect, test } from 'vitest';
import { FOOT_M } from '../../../core/units/index.ts';
import { ringWorking } from '../../../core/zones/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { rect } from '../../support/builders.ts';

const feet = (...northEast: readonly (readonly [number, number])[]) =>
  northEast.map(([north, east]) => ({ xM: east * FOOT_M, yM: north * FOOT_M }));

test('a published traverse of four points gives its published columns', () => {
  // J. Mahun, Open Access Surveying, Traverse Computations ch. G Area, example 1: points, sums and area
  const working = ringWorking(
    feet([500, 2000], [323.614, 1561.426], [526.996, 1488.321], [719.336, 1686.956]),
    'us',
  );
  const sums = [working.eastByNextNorthSum, working.nextEastByNorthSum].sort((a, b) => a - b);
  expectNear(sums[0] as number, 3_384_174.1, 0.05, 'ft²'); // published column sum, to 0.1
  expectNear(sums[1] as number, 3_590_045.6, 0.05, 'ft²'); // published column sum, to 0.1
  expectNear(working.area, 102_935.7, 0.1, 'ft²'); // published area
  expect(working.cornerDecimals).toBe(3); // the points are published to 0.001 ft
});

test('a published traverse of five points gives its published area', () => {
  // J. Mahun, Open Access Surveying, self-study solution "Traverse Area (1)": points and area
  const published = [
    [1541.207, 2215.89],
    [1373.915, 2336.574],
    [1299.818, 2350.205],
    [1343.189, 2523.212],
    [1569.36, 2359.08],
  ] as const;
  const working = ringWorking(feet(...published), 'us');
  expectNear(working.area, 38_970, 5, 'ft²'); // published 38,970 ± 5 ft²
  // The published points' columns in whole thousandths, so without rounding: exact integer arithmetic.
  const whole = published.map((pair) => pair.map((value) => BigInt(Math.round(value * 1000))));
  const columnOf = (ahead: 0 | 1): number =>
    Number(
      whole.reduce((sum, point, i) => {
        const next = whole[(i + 1) % whole.length] as bigint[];
        const product = ahead === 0 ? (point[1] ?? 0n) * (next[0] ?? 0n) : (next[1] ?? 0n) * (point[0] ?? 0n);
        return sum + product;
      }, 0n),
    ) / 1e6;
  expect(working.eastByNextNorthSum).toBe(columnOf(0)); // exact integer arithmetic above
  expect(working.nextEastByNorthSum).toBe(columnOf(1)); // exact integer arithmetic above
});

test('a rectangle, whichever way it was drawn, and every shown product is that of the shown corners', () => {
  const ring = rect(1.25, 2, 10, 4);
  for (const drawn of [ring, [...ring].reverse()]) {
    const working = ringWorking(drawn, 'metric');
    expect(working.area).toBe(40); // 10 × 4
    expect(working.cornerDecimals).toBe(2); // 1.25 has two
    working.corners.forEach((corner, i) => {
      const next = working.corners[(i + 1) % 4];
      expect(corner.eastByNextNorth).toBe(corner.east * (next?.north ?? Number.NaN)); // quarters are exact
    });
  }
});
