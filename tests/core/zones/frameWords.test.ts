import geographic from 'geographiclib-geodesic';
import { expect, test } from 'vitest';
import { lonLatToYard } from '../../../core/earth/index.ts';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { frameWords, mostEnlarged } from '../../../core/zones/frameWords.ts';
import { ringWorking } from '../../../core/zones/ringWorking.ts';
import { rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('the frame enlarges a small square 20 km east of its origin by what a geodesic area says', () => {
  for (const latDeg of [0, 40, 70]) {
    const origin = { lonDeg: 0, latDeg };
    // So far out that the part can be told from the last digits of the geodesic area.
    const { lat2, lon2 } = geographic.Geodesic.WGS84.Direct(latDeg, 0, 90, 20_000);
    const [lat, lon] = [lat2 ?? 0, lon2 ?? 0];
    const [d, e] = [1e-3, 1e-3 / Math.cos((latDeg * Math.PI) / 180)];
    const corners = [
      { latDeg: lat - d, lonDeg: lon - e },
      { latDeg: lat - d, lonDeg: lon + e },
      { latDeg: lat + d, lonDeg: lon + e },
      { latDeg: lat + d, lonDeg: lon - e },
    ];
    const polygon = geographic.Geodesic.WGS84.Polygon(false);
    for (const corner of corners) polygon.AddPoint(corner.latDeg, corner.lonDeg);
    const { area } = polygon.Compute(false, true);
    const frameM2 = signedAreaM2(corners.map((corner) => lonLatToYard(origin, corner)));
    // geographiclib-geodesic 2.2.0 (Karney 2013): 1e-5 or so, told to a fiftieth of it
    expectNear(mostEnlarged(20_000, latDeg), frameM2 / (area ?? Number.NaN) - 1, 2e-7, 'of the area');
  }
});

test('a placed yard says where its numbers start and how little the map stretches', () => {
  const frame = { kind: 'placed', origin: { lonDeg: -104.9, latDeg: 39.7 } } as const;
  const words = frameWords({ frame, units: 'metric', rings: [ringWorking(rect(-40, 0, 60, 10), 'metric')] });
  expect(words).toContain('about latitude 39.700000°, longitude -104.900000°, scale 1');
  expect(words).toContain('an area 40.0 m east or west of there'); // the western corner
  expect(words).toContain('39 parts in 10¹²'); // (40 / 6.376e6)², R² = MN at 39.7°
});

test('a loose yard has no place', () => {
  expect(frameWords({ frame: { kind: 'loose' }, units: 'us', rings: [] })).toContain('not placed on earth');
});
