import { test } from 'vitest';
import { radOfBearing } from '../../../core/frame/bearing.ts';
import { expectNear } from '../../support/expectNear.ts';

test.each([
  [90, 0], // east
  [0, Math.PI / 2], // north
  [45, Math.PI / 4], // north-east
  [180, -Math.PI / 2], // south
])('a bearing of %d° is %d rad from east', (bearingDeg, rad) => {
  expectNear(radOfBearing(bearingDeg), rad, 1e-15, 'rad');
});
