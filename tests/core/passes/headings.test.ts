import { test } from 'vitest';
import { radOfBearing } from '../../../core/frame/index.ts';
import { bearingDegOf, expectedLanes, laneHeadings } from '../../../core/passes/headings.ts';
import { moved, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('lanes across a rectangle are its width in swaths', () => {
  const ground = [region(rect(0, 0, 40, 12))];
  expectNear(expectedLanes(ground, 0, 2), 6, 1e-12, 'lanes'); // closed form: 12 m / 2 m
  expectNear(expectedLanes(ground, Math.PI / 2, 2), 20, 1e-12, 'lanes'); // closed form: 40 m / 2 m
  const bed = [region(rect(0, 0, 40, 12), rect(10, 4, 5, 3))];
  expectNear(expectedLanes(bed, 0, 2), 7.5, 1e-12, 'lanes'); // the bed's 3 m cut lanes in two: + 3 m / 2 m
});

test('the best heading runs along the long edge, however the ground lies', () => {
  for (const turnRad of [0, 0.3, 1.2, 2.9]) {
    const [best] = laneHeadings([region(moved(rect(0, 0, 40, 12), turnRad, 5, 5))], 2, 4);
    expectNear(Math.abs(Math.cos((best ?? 0) - turnRad)), 1, 1e-12, ''); // parallel to the 40 m edge
  }
});

test('bearings are compass bearings', () => {
  expectNear(bearingDegOf(0), 90, 1e-12, '°'); // east
  expectNear(bearingDegOf(Math.PI / 2), 0, 1e-12, '°'); // north
  expectNear(bearingDegOf(Math.PI / 4), 45, 1e-12, '°'); // north-east
  for (const deg of [0, 17, 90, 133, 179]) expectNear(bearingDegOf(radOfBearing(deg)), deg, 1e-9, '°'); // there and back
});
