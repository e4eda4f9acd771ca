import { describe, expect, test } from 'vitest';
import { regionAreaM2 } from '../../../core/kernel/index.ts';
import {
  areaBelowM2,
  cornersOf,
  faceAlong,
  levelForAreaM,
  stepForAreaM,
} from '../../../core/sections/facing.ts';
import { lShape, points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomStar, seededRandom } from '../../support/randomYards.ts';

const EAST = { x: 1, y: 0 };

describe('the level that leaves an exact area below it', () => {
  test('is a share of the length in a rectangle', () => {
    const facing = faceAlong(cornersOf(region(rect(3, 5, 20, 10))), EAST);
    expectNear(levelForAreaM(facing, 50), 5, 1e-12, 'm'); // closed form: 50 m² / 10 m
    expectNear(levelForAreaM(facing, 137), 13.7, 1e-12, 'm'); // closed form: 137 m² / 10 m
  });

  test('follows the square root in a triangle', () => {
    const facing = faceAlong(cornersOf(region(points([0, 0], [10, -10], [10, 10]))), EAST);
    expectNear(levelForAreaM(facing, 25), 5, 1e-12, 'm'); // closed form: area to x is x², so x = sqrt 25
    expectNear(levelForAreaM(facing, 2), Math.SQRT2, 1e-12, 'm'); // closed form: x = sqrt 2
  });

  test('jumps the step of an L', () => {
    const facing = faceAlong(cornersOf(region(lShape(10, 10, 6, 6))), EAST);
    expectNear(levelForAreaM(facing, 40), 4, 1e-12, 'm'); // worked by hand: 4 m x 10 m
    expectNear(levelForAreaM(facing, 52), 7, 1e-12, 'm'); // worked by hand: 40 m² + 3 m x 4 m
  });

  test('leaves that area below in any direction, holes and far-off origins included', () => {
    const random = seededRandom(11);
    for (let i = 0; i < 60; i++) {
      const centre = { xM: between(random, -2000, 2000), yM: between(random, -2000, 2000) };
      const outer = randomStar(random, 24, centre, 20, 0.5);
      const ground = region(outer, randomStar(random, 7, centre, 4, 0.5));
      const angle = between(random, 0, Math.PI);
      const facing = faceAlong(cornersOf(ground), { x: Math.cos(angle), y: Math.sin(angle) });
      const wholeM2 = regionAreaM2(ground);
      const targetM2 = wholeM2 * between(random, 0.02, 0.98);
      // The law of the function itself: area below its level is the area asked for.
      expectNear(areaBelowM2(facing, levelForAreaM(facing, targetM2)), targetM2, 1e-10 * wholeM2, 'm²');
    }
  });

  test('area below the highest corner is the whole area', () => {
    const ground = region(rect(0, 0, 8, 6), rect(2, 2, 2, 1));
    const facing = faceAlong(cornersOf(ground), { x: 0.6, y: 0.8 });
    expectNear(areaBelowM2(facing, 100), 46, 1e-12, 'm²'); // worked by hand: 8 x 6 - 2 x 1
    expectNear(areaBelowM2(facing, -100), 0, 1e-12, 'm²'); // nothing lies below
  });
});

test('a step is found without cancellation when the chord hardly changes', () => {
  expectNear(stepForAreaM(10, 5, 1e-14), 2, 1e-12, 'm'); // closed form of a strip: 10 m² / 5 m
  expect(stepForAreaM(0, 5, 1)).toBe(0); // nothing to sweep
});

test('corners that turn into the ground are known as such', () => {
  const facing = faceAlong(cornersOf(region(lShape(10, 10, 6, 6))), EAST);
  const reflex = facing.corners.filter((corner) => corner.reflex).map((corner) => corner.at);
  expect(reflex).toEqual([{ xM: 4, yM: 4 }]); // worked by hand: the inner corner of the L
});
