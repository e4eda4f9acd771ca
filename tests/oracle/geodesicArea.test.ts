import { describe, expect, test } from 'vitest';
import { frameAround, lonLatToYard, yardToLonLat } from '../../core/earth/index.ts';
import { ringPerimeterM, signedAreaM2 } from '../../core/kernel/index.ts';
import type { LonLat } from '../../core/spaces.ts';
import { expectNear } from '../support/expectNear.ts';
import { geodesicPolygon } from '../support/geodesicArea.ts';
import { between, randomStar, seededRandom } from '../support/randomYards.ts';

const at = (latDeg: number, lonDeg: number): LonLat => ({ latDeg, lonDeg });

describe('the planimeter we hold ourselves against', () => {
  // A degree square is no yard: 55 km from its origin a transverse Mercator is off by 4e-5. This shows only that the
  // oracle is set up rightly.
  test('gives the published area and perimeter of a degree square at the equator', () => {
    const { areaM2, perimeterM } = geodesicPolygon([at(0, 0), at(0, 1), at(1, 1), at(1, 0)]);
    expectNear(areaM2, 12_308_778_361.469, 0.001, 'm²'); // geographiclib-rs, PolygonArea documentation
    expectNear(perimeterM, 443_770.917_248_302, 1e-6, 'm'); // same
  });

  test('is negative for a ring that runs clockwise, as ours', () => {
    const { areaM2 } = geodesicPolygon([at(1, 0), at(1, 1), at(0, 1), at(0, 0)]);
    expectNear(areaM2, -12_308_778_361.469, 0.001, 'm²'); // same, "clockwise negative"
  });
});

describe('the area in the yard frame is the area on the ground', () => {
  test('of a yard of 0.0005° by 0.0003° at 40° north', () => {
    const corners = [at(40, -86), at(40, -85.9995), at(40.0003, -85.9995), at(40.0003, -86)];
    const origin = frameAround(corners);
    const ring = corners.map((corner) => lonLatToYard(origin, corner));
    expectNear(signedAreaM2(ring), 1422.2483, 1e-4, 'm²'); // GeographicLib 2.1.2 Planimeter
    expectNear(ringPerimeterM(ring), 152.014_451, 1e-6, 'm'); // same
  });

  /** Worst relative error of 200 random yards of about this radius, latitudes -80° to 80°, anywhere round the globe. */
  function worstOf(radiusM: (random: () => number) => number, floorM2: number): number {
    let worst = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const random = seededRandom(seed);
      const middle = at(between(random, -80, 80), between(random, -180, 180));
      const corners = 3 + Math.floor(random() * 40);
      const star = randomStar(random, corners, { xM: 0, yM: 0 }, radiusM(random), between(random, 0, 0.9));
      const onEarth = star.map((point) => yardToLonLat(middle, point));
      // From degrees alone, as an imported yard: its frame is laid anew round its corners.
      const origin = frameAround(onEarth);
      const frameM2 = signedAreaM2(onEarth.map((corner) => lonLatToYard(origin, corner)));
      const { areaM2 } = geodesicPolygon(onEarth);
      worst = Math.max(worst, (Math.abs(frameM2 - areaM2) - floorM2) / areaM2);
    }
    return worst;
  }

  test('to 1e-7 for 200 random yards 60 m to 3 km in radius, at latitudes from -80° to 80°', () => {
    const worst = worstOf((random) => 60 * 50 ** random(), 0);
    expectNear(worst, 0, 1e-7, 'of the area'); // design, section 15
  });

  test('to 1e-7 for 200 yards of 5 m to 60 m, but for the rounding of the planimeter itself', () => {
    // GeographicLib's Planimeter(1) states 0.0013 m² below 10 km of perimeter; a tenth of that is allowed for here.
    const worst = worstOf((random) => 5 * 12 ** random(), 1.3e-4);
    expectNear(Math.max(0, worst), 0, 1e-7, 'of the area'); // design, section 15
  });
});

test('a yard across the antimeridian has the area of the same yard elsewhere on its parallel', () => {
  const shape = [at(-17, 0), at(-17, 0.002), at(-16.999, 0.0025), at(-16.9985, 0.0004)];
  const areaAt = (shiftDeg: number) => {
    const corners = shape.map(({ latDeg, lonDeg }) => {
      const lon = lonDeg + shiftDeg;
      return at(latDeg, lon >= 180 ? lon - 360 : lon);
    });
    const origin = frameAround(corners);
    return signedAreaM2(corners.map((corner) => lonLatToYard(origin, corner)));
  };
  expect(shape.map(({ lonDeg }) => lonDeg + 179.999 >= 180)).toContain(true); // it does cross
  expectNear(areaAt(179.999), areaAt(0), 1e-9 * areaAt(0), 'm²'); // the ellipsoid is the same at every longitude
});
