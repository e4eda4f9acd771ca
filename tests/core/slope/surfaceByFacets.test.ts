import { describe, expect, test } from 'vitest';
import { intersectRegions, regionsAreaM2 } from '../../../core/kernel/index.ts';
import { surfaceByFacets } from '../../../core/slope/surfaceByFacets.ts';
import type { Region } from '../../../core/spaces.ts';
import type { Elevation } from '../../../core/yard.ts';
import { mapRing, moved, rect, region } from '../../support/builders.ts';
import { elevationOf } from '../../support/elevations.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomGround } from '../../support/randomGround.ts';
import { seededRandom } from '../../support/randomYards.ts';

/** Metres of height in whole millimetres at every node of 0.5 m, so that rounding adds nothing. */
const plane = (east: number, north: number) => (xM: number, yM: number) => 100 + east * xM + north * yM;

const overAll = (spacingM: number, heightAt: (xM: number, yM: number) => number | null): Elevation =>
  elevationOf(-60, -60, 120 / spacingM + 1, 120 / spacingM + 1, spacingM, heightAt);

function turned(elevation: Elevation, turnRad: number, xM: number, yM: number): Elevation {
  const corners = moved(elevation.corners, turnRad, xM, yM) as unknown as Elevation['corners'];
  return { ...elevation, corners };
}

function turnedGround(ground: readonly Region[], turnRad: number, xM: number, yM: number): Region[] {
  return ground.map(({ outer, holes }) => ({
    outer: moved(outer, turnRad, xM, yM),
    holes: holes.map((hole) => moved(hole, turnRad, xM, yM)),
  }));
}

/** A dome 4 m high in the middle of the yard, smooth everywhere. */
const dome = (xM: number, yM: number): number => 4 * Math.exp(-(xM ** 2 + yM ** 2) / 200);

/** √(1 + |∇z|²) of the dome by the midpoint rule, straight from the formula: z' = -(x/100) z. */
function domeSurfaceM2(west: number, south: number, widthM: number, heightM: number): number {
  const stepM = 0.02;
  let sum = 0;
  for (let x = west + stepM / 2; x < west + widthM; x += stepM) {
    for (let y = south + stepM / 2; y < south + heightM; y += stepM) {
      const z = dome(x, y);
      sum += Math.sqrt(1 + ((x * z) / 100) ** 2 + ((y * z) / 100) ** 2);
    }
  }
  return sum * stepM * stepM;
}

/** The same surface another way: every triangle cut to the ground by the overlay kernel, its grade by its normal. */
function surfaceByOverlay(ground: readonly Region[], heights: readonly number[][], spacingM: number): number {
  const at = (row: number, column: number) => ({
    xM: column * spacingM,
    yM: -row * spacingM,
    zM: heights[row]?.[column] ?? Number.NaN,
  });
  let sum = 0;
  for (let row = 0; row + 1 < heights.length; row++) {
    for (let column = 0; column + 1 < (heights[row]?.length ?? 0); column++) {
      const [nw, ne] = [at(row, column), at(row, column + 1)];
      const [sw, se] = [at(row + 1, column), at(row + 1, column + 1)];
      const isAlong = Math.abs(nw.zM - se.zM) <= Math.abs(ne.zM - sw.zM); // the rule as it is stated
      const triangles = isAlong
        ? [
            [nw, sw, se],
            [nw, se, ne],
          ]
        : [
            [ne, nw, sw],
            [ne, sw, se],
          ];
      for (const [a, b, c] of triangles as [typeof nw, typeof nw, typeof nw][]) {
        const [u, v] = [b, c].map((p) => [p.xM - a.xM, p.yM - a.yM, p.zM - a.zM]) as [number[], number[]];
        const [ux = 0, uy = 0, uz = 0] = u;
        const [vx = 0, vy = 0, vz = 0] = v;
        const normal = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx] as const;
        const factor = Math.hypot(...normal) / Math.abs(normal[2]);
        sum += factor * regionsAreaM2(intersectRegions(ground, [{ outer: [a, b, c], holes: [] }]));
      }
    }
  }
  return sum;
}

describe('the surface of ground over an elevation grid', () => {
  test('is what the overlay kernel makes of it, triangle by triangle, on rough ground', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const random = seededRandom(seed);
      const heights = Array.from({ length: 13 }, () =>
        Array.from({ length: 13 }, () => Math.round(random() * 8000) / 1000),
      );
      const ground = randomGround(seed, 24, 5).map(({ outer, holes }) => ({
        outer: moved(outer, 0.3, 30, -30),
        holes: holes.map((hole) => moved(hole, 0.3, 30, -30)),
      }));
      const grid: Elevation = {
        ...elevationOf(0, -60, 13, 13, 5, () => 0),
        heightsMm: heights.flat().map((heightM) => Math.round(heightM * 1000)),
      };
      const found = surfaceByFacets(ground, grid);
      const outside = found.planM2 - found.coveredM2;
      const kernelM2 = surfaceByOverlay(ground, heights, 5);
      expectNear(found.surfaceM2 - outside, kernelM2, 2e-3, 'm²'); // a step of 1 µm along some 300 edges of 5 m each
    }
  });

  test('a tilted plane is exactly √(1 + g²) of its plan, on any ground', () => {
    const tilted = overAll(2, plane(0.12, -0.16)); // g = √(0.12² + 0.16²) = 0.2
    for (let seed = 1; seed <= 25; seed++) {
      const ground = randomGround(seed, 30, 6);
      const found = surfaceByFacets(ground, tilted);
      expectNear(found.planM2, regionsAreaM2(ground), 1e-9, 'm²'); // the kernel's own area
      expectNear(found.coveredM2, found.planM2, 1e-8, 'm²'); // the grid covers all of it
      expectNear(found.surfaceM2, found.planM2 * Math.sqrt(1.04), 1e-8, 'm²'); // √(1 + 0.2²)
      expectNear(found.meanGrade, 0.2, 1e-9, ''); // the plane's
      expectNear(found.steepestGrade, 0.2, 1e-9, ''); // the plane's
    }
  });

  test('a level grid is the plan', () => {
    const ground = randomGround(7, 40, 8);
    const found = surfaceByFacets(
      ground,
      overAll(1, () => 31),
    );
    expectNear(found.surfaceM2, regionsAreaM2(ground), 1e-8, 'm²'); // level
    expect([found.steepM2, found.steepestGrade]).toEqual([0, 0]); // level
  });

  test('moving and turning ground and grid together changes nothing', () => {
    const ground = randomGround(11, 36, 5);
    const bumpy = overAll(2, (xM, yM) => 3 * Math.sin(xM / 7) + 2 * Math.cos(yM / 5));
    const still = surfaceByFacets(ground, bumpy);
    for (const [turnRad, xM, yM] of [
      [0, 1800, -900],
      [1, 0, 0],
      [2.5, -1500, 700],
      [Math.PI, 3, 4],
    ] as const) {
      const away = surfaceByFacets(turnedGround(ground, turnRad, xM, yM), turned(bumpy, turnRad, xM, yM));
      expectNear(away.surfaceM2, still.surfaceM2, 1e-7, 'm²'); // a rigid motion
      expectNear(away.meanGrade, still.meanGrade, 1e-9, ''); // a rigid motion
    }
  });

  test('a grid named from its other corners is the same ground', () => {
    const ground = randomGround(12, 36, 5);
    const bumpy = overAll(2, (xM, yM) => 3 * Math.sin(xM / 7) + 2 * Math.cos(yM / 5));
    const { columns, rows, heightsMm, corners } = bumpy;
    const southFirst: Elevation = {
      ...bumpy,
      corners: [corners[3], corners[2], corners[1], corners[0]],
      heightsMm: Array.from({ length: rows }, (_, row) =>
        heightsMm.slice((rows - 1 - row) * columns, (rows - row) * columns),
      ).flat(),
    };
    const [still, mirrored] = [surfaceByFacets(ground, bumpy), surfaceByFacets(ground, southFirst)];
    expectNear(mirrored.surfaceM2, still.surfaceM2, 1e-8, 'm²'); // only the order of the rows differs; no diagonal ties here
  });

  test('a finer grid of the same plane changes nothing', () => {
    const ground = randomGround(5, 24, 3);
    const areas = [4, 2, 1, 0.5].map(
      (spacingM) => surfaceByFacets(ground, overAll(spacingM, plane(0.25, 0.5))).surfaceM2,
    );
    for (const areaM2 of areas) expectNear(areaM2, areas[0] as number, 1e-8, 'm²'); // the same plane
  });

  test('parts of the ground sum to the whole', () => {
    const hilly = overAll(1, dome);
    const [west, east] = [region(rect(-20, -15, 17.3, 30)), region(rect(-2.7, -15, 22.7, 30))];
    const parts = surfaceByFacets([west], hilly).surfaceM2 + surfaceByFacets([east], hilly).surfaceM2;
    expectNear(surfaceByFacets([region(rect(-20, -15, 40, 30))], hilly).surfaceM2, parts, 1e-8, 'm²'); // additivity
    expectNear(surfaceByFacets([west, east], hilly).surfaceM2, parts, 1e-8, 'm²'); // additivity
  });

  test('a dome comes near its own integral, four times nearer at half the spacing', () => {
    const trueM2 = domeSurfaceM2(-18, -11, 37, 24); // midpoint rule of the closed formula at 2 cm
    const errors = [4, 2, 1].map((spacingM) =>
      Math.abs(surfaceByFacets([region(rect(-18, -11, 37, 24))], overAll(spacingM, dome)).surfaceM2 - trueM2),
    );
    const [coarse, middle, fine] = errors as [number, number, number];
    expect(fine / trueM2).toBeLessThan(1e-4); // the error a 1 m grid of this dome leaves, by the rule below
    expect(coarse / middle).toBeGreaterThan(3); // second order: 4, and rounding to millimetres
    expect(middle / fine).toBeGreaterThan(3); // the same
  });

  test('ground without heights counts as level, and how much is said', () => {
    const eastHalf = overAll(1, (xM) => (xM < 0 ? null : 0.5 * xM));
    const found = surfaceByFacets([region(rect(-10, -10, 20, 20))], eastHalf);
    expect(found.planM2).toBe(400); // 20 × 20
    expectNear(found.coveredM2, 200, 1e-8, 'm²'); // the east half
    expectNear(found.surfaceM2, 200 + 200 * Math.sqrt(1.25), 1e-8, 'm²'); // level, and 50 %
    expectNear(found.meanGrade, 0.5, 1e-9, ''); // of the part covered
    expectNear(found.steepM2, 200, 1e-8, 'm²'); // 50 % is beyond a third
  });

  test('ground beyond the grid counts as level', () => {
    const small = elevationOf(0, 0, 6, 6, 1, plane(0.75, 0)); // 5 m square
    const found = surfaceByFacets([region(rect(-5, -5, 20, 20))], small);
    expectNear(found.coveredM2, 25, 1e-9, 'm²'); // 5 × 5
    expectNear(found.surfaceM2, 375 + 25 * 1.25, 1e-9, 'm²'); // √(1 + 0.75²) = 1.25
    const away = surfaceByFacets([region(rect(100, 100, 3, 3))], small);
    expect([away.coveredM2, away.surfaceM2, away.meanGrade, away.steepestGrade]).toEqual([0, 9, 0, 0]); // none of it
  });

  test('no ground has no surface', () => {
    const found = surfaceByFacets([], overAll(2, dome));
    expect([found.planM2, found.surfaceM2, found.coveredM2]).toEqual([0, 0, 0]); // nothing
  });

  test('rings that run the wrong way are measured all the same', () => {
    const tilted = overAll(2, plane(0.75, 0));
    const backwards = { outer: [...rect(0, 0, 10, 10)].reverse(), holes: [rect(2, 2, 3, 3)] };
    expectNear(surfaceByFacets([backwards], tilted).surfaceM2, 91 * 1.25, 1e-9, 'm²'); // (100 - 9) × √(1 + 0.75²)
  });

  test('a grid a little out of square still gives a plane its factor', () => {
    const square = overAll(2, () => 0);
    const pulled = mapRing(square.corners, ({ xM, yM }) => ({ xM: xM + 0.0004 * yM + 1e-6 * xM * yM, yM }));
    const grid: Elevation = { ...square, corners: pulled as unknown as Elevation['corners'] };
    const ground = randomGround(21, 30, 4);
    expectNear(surfaceByFacets(ground, grid).surfaceM2, regionsAreaM2(ground), 1e-8, 'm²'); // level stays level
    expectNear(surfaceByFacets(ground, grid).coveredM2, regionsAreaM2(ground), 1e-8, 'm²'); // nothing between cells is lost
  });
});

test('a grid whose north row is drawn together to one place still measures in numbers', () => {
  const square = elevationOf(0, 0, 3, 3, 10, (xM, yM) => xM + yM);
  const [northWest, , southEast, southWest] = square.corners;
  const wedge: Elevation = { ...square, corners: [northWest, northWest, southEast, southWest] };
  const sloped = surfaceByFacets([region(rect(-1, -1, 30, 30))], wedge);
  expectNear(sloped.coveredM2, (20 * 20) / 2, 1e-9, 'm²'); // a triangle 20 m wide and 20 m high
  expect(sloped.surfaceM2).toBeGreaterThan(sloped.planM2); // it slopes, and is a number
  expect(sloped.steepestGrade).toBeLessThan(Infinity);
});
