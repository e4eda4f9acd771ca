import { expect, test } from 'vitest';
import { narrowGroundM2, narrowWays } from '../../../core/plan/narrowGround.ts';
import { rect, region } from '../../support/builders.ts';

const SWATH_M = 2;
/** Two squares of 12 m, 8 m apart, joined by a way of some width. */
const dumbbell = (widthM: number) =>
  region([
    { xM: 0, yM: 0 },
    { xM: 12, yM: 0 },
    { xM: 12, yM: 5 },
    { xM: 20, yM: 5 },
    { xM: 20, yM: 0 },
    { xM: 32, yM: 0 },
    { xM: 32, yM: 12 },
    { xM: 20, yM: 12 },
    { xM: 20, yM: 5 + widthM },
    { xM: 12, yM: 5 + widthM },
    { xM: 12, yM: 12 },
    { xM: 0, yM: 12 },
  ]);

test('a hair-thin neck counts with all of its ground', () => {
  // 0.3 m × 8 m, less what growing back reaches into its mouths: at most 0.5 m × 0.3 m at each end
  const areaM2 = narrowGroundM2([dumbbell(0.3)], SWATH_M);
  expect(areaM2).toBeLessThanOrEqual(2.4);
  expect(areaM2).toBeGreaterThan(2.4 - 2 * 0.5 * 0.3);
});

test('a neck counts however thin and small, when the lawn hangs together by it', () => {
  expect(narrowGroundM2([dumbbell(0.001)], SWATH_M)).toBeGreaterThan(0.001 * (8 - 2 * 0.5)); // 8 m of 1 mm, less its mouths
  expect(narrowGroundM2([dumbbell(0.05)], SWATH_M)).toBeLessThanOrEqual(0.4); // 8 m of 5 cm, and no corner of the lawns
});

test('a neck a pass fits down, and the corners of a lawn, are not narrow', () => {
  expect(narrowGroundM2([dumbbell(1.2)], SWATH_M)).toBe(0); // wider than half a swath of 2 m
  expect(narrowGroundM2([region(rect(0, 0, 30, 20), rect(10, 8, 3, 3))], SWATH_M)).toBe(0);
});

test('the quick look misses nothing: a neck just under half a swath is found among round beds', () => {
  const bed = Array.from({ length: 24 }, (_, i) => {
    const turnRad = (-2 * Math.PI * i) / 24;
    return { xM: 6 + 1.5 * Math.cos(turnRad), yM: 8 + 1.5 * Math.sin(turnRad) };
  });
  const ground = dumbbell(0.95); // half the swath is 1 m
  const areaM2 = narrowGroundM2([{ ...ground, holes: [bed] }], SWATH_M);
  expect(areaM2).toBeGreaterThan(0.95 * (8 - 2 * 0.5)); // 8 m long, less half a width at each mouth
});

test('narrow ground is said once a zone by name, and not of a zone no pass fits in anyway', () => {
  const zones = [
    { name: 'front', treated: [dumbbell(0.3)] },
    { name: 'strip', treated: [region(rect(0, 20, 20, 0.4))] },
    { name: 'back', treated: [region(rect(0, 40, 20, 20))] },
  ] as unknown as Parameters<typeof narrowWays>[0]['zones'];
  const said = narrowWays({ zones }, SWATH_M, new Set(['strip']));
  expect(said.map(({ kind, where }) => [kind, where])).toEqual([
    ['plan/too-narrow-to-walk', { thing: 'front' }],
  ]);
});
