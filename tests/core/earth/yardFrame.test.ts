import { describe, expect, test } from 'vitest';
import { lonLatToYard, yardToLonLat } from '../../../core/earth/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

/** WGS84 ellipsoid: NIMA TR8350.2, 3rd edition, table 3.1. */
const A_M = 6_378_137;
const F = 1 / 298.257223563;
const E2 = F * (2 - F);

describe('the yard frame', () => {
  test('puts its origin at 0, 0', () => {
    const at = { lonDeg: -86.25, latDeg: 40.125 };
    const { xM, yM } = lonLatToYard(at, at);
    expectNear(xM, 0, 1e-9, 'm');
    expectNear(yM, 0, 1e-9, 'm');
  });

  test('is true to length along both axes at any latitude', () => {
    for (const latDeg of [-80, -45, 0, 12.5, 40, 60, 80]) {
      const origin = { lonDeg: 15, latDeg };
      const sin = Math.sin((latDeg * Math.PI) / 180);
      const cos = Math.cos((latDeg * Math.PI) / 180);
      const STEP_DEG = 1e-4;
      const stepRad = (STEP_DEG * Math.PI) / 180;
      // Radii of curvature of the ellipsoid: N = a / √(1 - e² sin²φ), M = a (1 - e²) / (1 - e² sin²φ)^1.5.
      const primeM = A_M / Math.sqrt(1 - E2 * sin * sin);
      const meridianM = (A_M * (1 - E2)) / (1 - E2 * sin * sin) ** 1.5;
      const east = lonLatToYard(origin, { lonDeg: 15 + STEP_DEG, latDeg });
      const north = lonLatToYard(origin, { lonDeg: 15, latDeg: latDeg + STEP_DEG });
      expectNear(east.xM, primeM * cos * stepRad, 1e-6, 'm');
      // M changes along the step by its second derivative only; over 11 m that is far below a micrometre.
      expectNear(north.yM, meridianM * stepRad, 1e-4, 'm');
      expectNear(north.xM, 0, 1e-9, 'm');
    }
  });

  test('brings every point within 5 km back to its place', () => {
    const random = seededRandom(11);
    for (let i = 0; i < 300; i++) {
      const origin = { lonDeg: between(random, -180, 180), latDeg: between(random, -80, 80) };
      const point = { xM: between(random, -5000, 5000), yM: between(random, -5000, 5000) };
      const again = lonLatToYard(origin, yardToLonLat(origin, point));
      expectNear(again.xM, point.xM, 1e-7, 'm');
      expectNear(again.yM, point.yM, 1e-7, 'm');
    }
  });

  test('runs on over the antimeridian', () => {
    const origin = { lonDeg: 179.9999, latDeg: -17 };
    const east = lonLatToYard(origin, { lonDeg: -179.9999, latDeg: -17 });
    const west = lonLatToYard(origin, { lonDeg: 179.9997, latDeg: -17 });
    expectNear(east.xM, -west.xM, 1e-6, 'm'); // 0.0002° either side
    expect(east.xM).toBeGreaterThan(20); // 0.0002° is 21 m there
    const back = yardToLonLat(origin, east);
    expectNear(Math.abs(back.lonDeg), 179.9999, 1e-9, '°');
  });

  test('of many yards are kept apart', () => {
    for (let i = 0; i < 40; i++) {
      const origin = { lonDeg: i, latDeg: i };
      expectNear(lonLatToYard(origin, origin).xM, 0, 1e-9, 'm');
      expectNear(lonLatToYard({ lonDeg: 0, latDeg: 0 }, { lonDeg: 0, latDeg: 0 }).yM, 0, 1e-9, 'm');
    }
  });
});
