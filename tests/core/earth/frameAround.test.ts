import { describe, expect, test } from 'vitest';
import { frameAround } from '../../../core/earth/index.ts';
import type { LonLat } from '../../../core/spaces.ts';
import { expectNear } from '../../support/expectNear.ts';

function expectAt(actual: LonLat, lonDeg: number, latDeg: number): void {
  expectNear(actual.lonDeg, lonDeg, 1e-9, '°');
  expectNear(actual.latDeg, latDeg, 1e-9, '°');
}

describe('a frame is laid round places', () => {
  test('with its origin halfway between the outermost', () => {
    const places = [
      { lonDeg: 10, latDeg: 50 },
      { lonDeg: 10.004, latDeg: 50.002 },
      { lonDeg: 10.001, latDeg: 50.001 },
    ];
    expectAt(frameAround(places), 10.002, 50.001); // halfway, by hand
  });

  test('at the one place there is', () => {
    expectAt(frameAround([{ lonDeg: -86, latDeg: 40 }]), -86, 40);
  });

  test('the short way round over the antimeridian, from either side', () => {
    const east = { lonDeg: -179.999, latDeg: -17 };
    const west = { lonDeg: 179.997, latDeg: -17 };
    expectAt(frameAround([east, west]), 179.999, -17); // 0.004° apart, halfway
    expectAt(frameAround([west, east]), 179.999, -17);
  });

  test('always with a longitude from -180 up to 180', () => {
    const { lonDeg } = frameAround([
      { lonDeg: 179.9, latDeg: 0 },
      { lonDeg: -179.7, latDeg: 0 },
    ]);
    expectNear(lonDeg, -179.9, 1e-9, '°'); // 180.1 the other way round
    expect(frameAround([{ lonDeg: 180, latDeg: 0 }]).lonDeg).toBe(-180); // the same meridian
  });
});
