import { expect, test } from 'vitest';
import { bearingOfWay, radOfBearing, wholeBearing } from '../../../core/frame/index.ts';
import { expectNear } from '../../support/expectNear.ts';

test.each([
  [90, 0], // east
  [0, Math.PI / 2], // north
  [45, Math.PI / 4], // north-east
  [180, -Math.PI / 2], // south
])('a bearing of %d° is %d rad from east', (bearingDeg, rad) => {
  expectNear(radOfBearing(bearingDeg), rad, 1e-15, 'rad');
});

test.each([
  [370, 10], // 360 + 10
  [-90, 270], // 360 - 90
  [360, 0],
  [-1e-20, 0], // so close below north that it rounds to a whole turn
])('a bearing of %d° is %d° without whole turns', (bearingDeg, whole) => {
  expect(wholeBearing(bearingDeg)).toBe(whole);
});

test.each([
  [1, 0, 90], // east
  [0, -2, 180], // south
  [-3, 0, 270], // west
  [-1, 1, 315], // north-west
  [0, 0, 0],
])('so far east (%d) and north (%d) is a bearing of %d°', (eastM, northM, bearingDeg) => {
  expectNear(bearingOfWay(eastM, northM), bearingDeg, 1e-13, '°');
});
