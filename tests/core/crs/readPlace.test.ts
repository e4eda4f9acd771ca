import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeProjector, readPlace } from '../../../core/crs/index.ts';
import { formatPlace } from '../../../core/earth/index.ts';
import { expectNear } from '../../support/expectNear.ts';

function expectPlace(typed: string, latDeg: number, lonDeg: number, within = 1e-12): void {
  const read = readPlace(typed, 'place');
  if (!read.ok) throw new Error(`${typed}: ${JSON.stringify(read.problems)}`);
  expectNear(read.value.latDeg, latDeg, within, `° of ${typed}`);
  expectNear(read.value.lonDeg, lonDeg, within, `° of ${typed}`);
}

describe('a place on earth as people type it', () => {
  test.each([
    ['39.9, -86.2'],
    ['39.9 -86.2'],
    ['39.9;-86.2'],
    ['  39.9 ,  −86.2 '],
    ['39.9 N, 86.2 W'],
    ['39.9N 86.2W'],
    ['86.2 W, 39.9 N'],
    ['N 39.9 W 86.2'],
    ['w86.2 n39.9'],
    ['39.9°, -86.2°'],
    ['39.9 deg, -86.2 degrees'],
    ['39°54′N 86°12′W'],
    ['39° 54\' 0" N, 86° 12\' 0" W'],
    ["39°54'00''N 86°12'00''W"],
    ['39 54 00 N 86 12 00 W'],
    ['39 54 00, -86 12 00'],
    ['39 54 00 -86 12 00'],
    ['39:54:00N 86:12:00W'],
    ['39 54.0 N, 86 12.0 W'],
    ['EPSG:4326 39.9 -86.2'],
    ['86.2w, 39.9n'],
  ])('%s', (typed) => {
    expectPlace(typed, 39.9, -86.2); // 54′ are 0.9°, 12′ are 0.2°
  });

  test('in degrees, minutes and seconds of GeodSolve’s own example', () => {
    // 40:38:23N 073:46:44W (GeographicLib, man page GeodSolve(1)): 40 + 38/60 + 23/3600, 73 + 46/60 + 44/3600
    expectPlace('40:38:23N 073:46:44W', 40 + 38 / 60 + 23 / 3600, -(73 + 46 / 60 + 44 / 3600));
  });

  test('south and east, north and east, on the equator', () => {
    expectPlace('41.2865 S, 174.7762 E', -41.2865, 174.7762);
    expectPlace('-0.0, 180', 0, 180);
    expectPlace('-0 30 0, 9', -0.5, 9); // 30′ south of the equator
    expectPlace('90, 0', 90, 0);
  });

  test('as east and north in a coordinate system, by its code', () => {
    // The false origin of EPSG:2965 (Indiana East, US survey feet) by its definition: 37°30′ N, 85°40′ W at
    // 328,083.333 E, 820,208.333 N.
    for (const typed of [
      'EPSG:2965 328083.3333 820208.3333',
      '328083.3333, 820208.3333 EPSG:2965',
      'epsg 2965 N 820208.3333 E 328083.3333',
      'EPSG:2965 328083.3333 E, 820208.3333 N',
    ]) {
      expectPlace(typed, 37.5, -(85 + 40 / 60), 1e-8);
    }
    const inIndiana = readPlace('EPSG:2965 186000 1650000', 'place');
    const projector = makeProjector('EPSG:2965', '');
    if (!inIndiana.ok || !projector.ok) throw new Error('not read');
    expectNear(projector.value.fromLonLat(inIndiana.value)[0], 186_000, 1e-4, 'US survey ft'); // as typed
  });
});

describe('what is no place is said for what it is', () => {
  test.each([
    ['', 'value/missing'],
    ['here', 'value/not-a-place'],
    ['39.9', 'value/not-a-place'],
    ['39.9, -86.2, 12', 'value/not-a-place'],
    ['39,9 -86,2', 'value/not-a-place'],
    ['39.9 N, 86.2 N', 'value/not-a-place'],
    ['39.5 30 N, 86 W', 'value/not-a-place'],
    ['39 60 N, 86 W', 'value/not-a-place'],
    ['39 54 N, -86 12 W', 'value/not-a-place'],
    ['N39N, 86W', 'value/not-a-place'],
    ['EPSG:2965', 'value/not-a-place'],
    ['91, 200', 'value/place-out-of-range'],
    ['39.9, 190', 'value/place-out-of-range'],
    ['EPSG:999999 1 2', 'value/unknown-crs'],
    ['EPSG:4326 99 200', 'value/place-outside-crs'],
    ['EPSG:32616 900000000 4400000', 'value/place-outside-crs'],
  ])('%j', (typed, kind) => {
    expect(readPlace(typed, 'place')).toMatchObject({ ok: false, problems: [{ kind }] });
  });

  test('latitude and longitude look swapped only where they would fit the other way round', () => {
    expect(readPlace('-122.4, 37.8', 'place')).toMatchObject({
      problems: [{ facts: { swappedLikely: true } }],
    });
    expect(readPlace('-122.4, 137.8', 'place')).toMatchObject({
      problems: [{ facts: { swappedLikely: false } }],
    });
  });
});

test('a place is read back as it is shown', () => {
  expectPlace(formatPlace({ latDeg: -41.28651, lonDeg: 174.7762 }), -41.28651, 174.7762);
});

describe('whatever is typed', () => {
  const lat = fc.double({ min: -90, max: 90, noNaN: true });
  const lon = fc.double({ min: -180, max: 180, noNaN: true });

  test('is a place on earth or trouble that is said, never a fault', () => {
    const junk = fc.string({ unit: fc.constantFrom(...'0123456789.,;:-+ °\'"NSEWnsewEPSGx') });
    fc.assert(
      fc.property(fc.oneof(junk, fc.string()), (typed) => {
        const read = readPlace(typed, 'place');
        if (!read.ok) return read.problems[0].kind.startsWith('value/');
        const { latDeg, lonDeg } = read.value;
        return Math.abs(latDeg) <= 90 && Number.isFinite(lonDeg);
      }),
      { numRuns: 2000, seed: 11 },
    );
  });

  test('in decimals or in degrees, minutes and seconds is the same place', () => {
    const dms = (deg: number, letters: readonly [string, string]): string => {
      const seconds = Math.round(Math.abs(deg) * 3_600_000) / 1000;
      const [d, m] = [Math.floor(seconds / 3600), Math.floor((seconds % 3600) / 60)];
      return `${d}°${m}'${(seconds - 3600 * d - 60 * m).toFixed(3)}"${deg < 0 ? letters[1] : letters[0]}`;
    };
    fc.assert(
      fc.property(lat, lon, (latDeg, lonDeg) => {
        expectPlace(`${latDeg.toFixed(9)}, ${lonDeg.toFixed(9)}`, latDeg, lonDeg, 1e-9); // nine decimals typed
        const seconds = `${dms(latDeg, ['N', 'S'])} ${dms(lonDeg, ['E', 'W'])}`;
        // A thousandth of a second typed. Minutes that round up to 60.000" are no way to write a time or an angle.
        if (!seconds.includes('60.000')) expectPlace(seconds, latDeg, lonDeg, 0.001 / 3600);
      }),
      { numRuns: 500, seed: 12 },
    );
  });
});
