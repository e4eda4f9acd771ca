import { expect, test } from 'vitest';
import { offsetRegions } from '../../../core/kernel/index.ts';
import { narrowLanes } from '../../../core/passes/narrowLanes.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

function lanesFor(ground: ReturnType<typeof region>, swathM: number) {
  return narrowLanes(ground, offsetRegions([ground], -swathM / 2), swathM);
}

test('a strip a little narrower than the swath gets one lane down its middle', () => {
  const lanes = lanesFor(region(rect(0, 0, 12, 1.6)), 1.8);
  expect(lanes.length).toBe(1);
  expectNear(lanes[0]?.[0].yM ?? Number.NaN, 0.8, 1e-6, 'm'); // the middle of 1.6 m
});

test('a strip much narrower than the swath gets none', () => {
  expect(lanesFor(region(rect(0, 0, 12, 1)), 1.8)).toEqual([]); // 1 m of 1.8 m: 44 % would land beside it
});

test('a neck between two lawns gets one, the lawns none', () => {
  const ground = region(
    points(
      [0, 0],
      [8, 0],
      [8, 3],
      [14, 3],
      [14, 0],
      [22, 0],
      [22, 8],
      [14, 8],
      [14, 4.6],
      [8, 4.6],
      [8, 8],
      [0, 8],
    ),
  );
  const lanes = lanesFor(ground, 1.8);
  expect(lanes.length).toBe(1);
  expectNear(lanes[0]?.[0].yM ?? Number.NaN, 3.8, 0.01, 'm'); // the middle of the neck, 3 to 4.6 m
});

test('ground as wide as it should be gets none', () => {
  expect(lanesFor(region(rect(0, 0, 12, 12)), 1.8)).toEqual([]); // corners are no necks
});
