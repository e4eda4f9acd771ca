import proj4 from 'proj4';
import { expect, test } from 'vitest';
import { lonLatToYard } from '../../../core/earth/index.ts';
import { LOOSE_SRS_ID, PLACED_SRS_ID, spatialFrameOf, srsIdOf } from '../../../core/yardFile/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { PLACED } from '../../support/storedYards.ts';

test('a loose yard has the standard’s undefined Cartesian system and needs none of its own', () => {
  expect(srsIdOf({ kind: 'loose' })).toBe(LOOSE_SRS_ID);
  expect(LOOSE_SRS_ID).toBe(-1); // OGC 12-128r17, requirement 11
  expect(spatialFrameOf({ kind: 'loose' })).toBeNull();
});

test.each([
  [-105.08123456789, 40.58765432101],
  [145.3, -42.75],
  [1e-7, -1e-9],
])('the frame of a yard at %d, %d, read as WKT, is the one core/frame computes in', (lonDeg, latDeg) => {
  const origin = { lonDeg, latDeg };
  const frame = spatialFrameOf({ kind: 'placed', origin });
  expect(frame?.srs_id).toBe(PLACED_SRS_ID);
  const read = proj4('EPSG:4326', frame?.definition ?? '');
  const place = { lonDeg: lonDeg + 0.004, latDeg: latDeg - 0.003 };
  const [xM = Number.NaN, yM = Number.NaN] = read.forward([place.lonDeg, place.latDeg]);
  const expected = lonLatToYard(origin, place);
  expectNear(xM, expected.xM, 1e-6, 'm');
  expectNear(yM, expected.yM, 1e-6, 'm');
});

test('a placed yard says so in its srs_id', () => {
  expect(srsIdOf(PLACED)).toBe(PLACED_SRS_ID);
});
