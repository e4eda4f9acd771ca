import { describe, expect, test } from 'vitest';
import { makeProjector, type Projector } from '../../../core/crs/index.ts';
import { expectNear } from '../../support/expectNear.ts';

function projector(crs: string): Projector {
  const made = makeProjector(crs, 'plat.tif');
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}

const UTM_13_WKT =
  'PROJCS["WGS 84 / UTM zone 13N",GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563]],' +
  'PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433]],PROJECTION["Transverse_Mercator"],' +
  'PARAMETER["latitude_of_origin",0],PARAMETER["central_meridian",-105],PARAMETER["scale_factor",0.9996],' +
  'PARAMETER["false_easting",500000],PARAMETER["false_northing",0],UNIT["metre",1]]';

describe('a reference system that a file names', () => {
  test.each([
    ['an EPSG code', 'EPSG:32613'],
    ['in small letters', 'epsg:32613'],
    ['well-known text', UTM_13_WKT],
    ['PROJ text', '+proj=utm +zone=13 +datum=WGS84 +units=m +no_defs'],
  ])('is read from %s', (_name, crs) => {
    // The central meridian of UTM zone 13 is 105° W and stands at 500,000 m east by definition (EPSG method 9807).
    const { lonDeg, latDeg } = projector(crs).toLonLat(500_000, 0);
    expectNear(lonDeg, -105, 1e-9, '°');
    expectNear(latDeg, 0, 1e-9, '°');
    const [x, y] = projector(crs).fromLonLat(projector(crs).toLonLat(483_000, 4_400_000));
    expectNear(x, 483_000, 1e-6, 'm');
    expectNear(y, 4_400_000, 1e-6, 'm');
  });

  test('in degrees keeps them, x = longitude', () => {
    expect(projector('EPSG:4326').toLonLat(-86, 40)).toEqual({ lonDeg: -86, latDeg: 40 });
  });

  test('in US survey feet is not taken for international feet', () => {
    const at = { lonDeg: -105.5, latDeg: 39.5 };
    const frame =
      '+proj=lcc +lat_0=37.8333333333333 +lon_0=-105.5 +lat_1=39.75 +lat_2=38.45 +x_0=914401.8289 +y_0=0 +ellps=GRS80';
    const [surveyX] = projector(`${frame} +units=us-ft`).fromLonLat(at);
    const [footX] = projector(`${frame} +units=ft`).fromLonLat(at);
    expectNear(surveyX, (914_401.8289 * 3937) / 1200, 1e-3, 'US survey ft'); // 1200/3937 m, NBS 1959
    expectNear(footX, 914_401.8289 / 0.3048, 1e-3, 'ft'); // 0.3048 m, NBS 1959
  });

  test('that we hold a code of in US survey feet gives degrees in the right county', () => {
    // EPSG:2232, NAD83 / Colorado Central (ftUS): false origin 3,000,000 ftUS, 1,000,000 ftUS at 105.5° W, 37.8333° N.
    const { lonDeg, latDeg } = projector('EPSG:2232').toLonLat(3_000_000, 1_000_000);
    expectNear(lonDeg, -105.5, 1e-7, '°');
    expectNear(latDeg, 37 + 50 / 60, 1e-7, '°');
  });

  test.each([
    'EPSG:999999',
    'EPSG:',
    'EPSG:0',
    'somewhere',
    '',
    'PROJCS[',
    'constructor',
    '__proto__',
    '+proj=nonsense',
    '42',
  ])('is refused by name when it is %j', (crs) => {
    expect(makeProjector(crs, 'plat.tif')).toEqual({
      ok: false,
      problems: [{ kind: 'file/unknown-crs', where: { fileName: 'plat.tif' }, facts: { crs } }],
    });
  });
});
