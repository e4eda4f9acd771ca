import geographic from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import { makeProjector } from '../../core/crs/index.ts';
import { frameAround, lonLatToYard, yardToLonLat } from '../../core/earth/index.ts';
import { ringPerimeterM, signedAreaM2 } from '../../core/kernel/index.ts';
import type { LonLat } from '../../core/spaces.ts';
import { expectNear } from '../support/expectNear.ts';
import { geodesicPolygon } from '../support/geodesicArea.ts';
import { planimeter } from '../support/planimeter.ts';

const at = (latDeg: number, lonDeg: number): LonLat => ({ latDeg, lonDeg });

function fromEarth(crs: string, latDeg: number, lonDeg: number): readonly [number, number] {
  const made = makeProjector(crs, 'plat.tif');
  if (!made.ok) throw new Error(`${crs}: ${JSON.stringify(made.problems)}`);
  return made.value.fromLonLat({ latDeg, lonDeg });
}

function toEarth(crs: string, x: number, y: number): LonLat {
  const made = makeProjector(crs, 'plat.tif');
  if (!made.ok) throw new Error(`${crs}: ${JSON.stringify(made.problems)}`);
  return made.value.toLonLat(x, y);
}

describe('the ellipsoidal programs we hold ourselves against give their own published answers', () => {
  // GeographicLib, JavaScript and Python documentation, "Measuring areas": Antarctica.
  const antarctica = [
    [-63.1, -58],
    [-72.9, -74],
    [-71.9, -102],
    [-74.9, -102],
    [-74.3, -131],
    [-77.5, -163],
    [-77.4, 163],
    [-71.7, 172],
    [-65.9, 140],
    [-65.7, 113],
    [-66.6, 88],
    [-66.9, 59],
    [-69.8, 25],
    [-70.0, -4],
    [-71.0, -14],
    [-77.3, -33],
    [-77.9, -46],
    [-74.7, -61],
  ].map(([lat = 0, lon = 0]) => at(lat, lon));

  test.each([
    ['geographiclib-geodesic', (ring: readonly LonLat[]) => geodesicPolygon(ring)],
    ['Planimeter', (ring: readonly LonLat[]) => planimeter([ring])[0] ?? { areaM2: 0, perimeterM: 0 }],
  ])('%s: Antarctica and an octant', (_name, measure) => {
    const { areaM2, perimeterM } = measure(antarctica);
    expectNear(perimeterM, 16_831_067.893, 0.001, 'm'); // GeographicLib documentation, as above
    expectNear(Math.abs(areaM2), 13_662_703_680_020.1, 0.1, 'm²'); // same
    const octant = measure([at(90, 0), at(0, 0), at(0, 90)]);
    expectNear(octant.perimeterM, 30_022_685, 1, 'm'); // docs.rs geographiclib-rs
    expectNear(octant.areaM2, 63_758_202_715_511, 1, 'm²'); // same
  });

  test('geodesics between two places', () => {
    const { WGS84 } = geographic.Geodesic;
    const hard = WGS84.Inverse(27.2, 0, -27.1, 179.5);
    expectNear(hard.s12 ?? Number.NaN, 19_974_354.765767, 5e-7, 'm'); // GeographicLib test suite, GeodSolve78
    expectNear(hard.azi1 ?? Number.NaN, 45.82468716758, 5e-11, '°'); // same
    expectNear(hard.azi2 ?? Number.NaN, 134.2277653267, 5e-11, '°'); // same
    const jfk = WGS84.Inverse(
      40 + 38 / 60 + 23 / 3600,
      -(73 + 46 / 60 + 44 / 3600),
      1 + 21 / 60 + 33 / 3600,
      103 + 59 / 60 + 22 / 3600,
    );
    expectNear(jfk.s12 ?? Number.NaN, 15_347_628, 0.5, 'm'); // GeodSolve(1), example
    const toATenthOfASecond = 0.05 / 3600;
    expectNear(jfk.azi1 ?? Number.NaN, 3 + 18 / 60 + 29.9 / 3600, toATenthOfASecond, '°'); // same
    expectNear(jfk.azi2 ?? Number.NaN, 177 + 29 / 60 + 9.2 / 3600, toATenthOfASecond, '°'); // same
    const wellington = WGS84.Inverse(-41.32, 174.81, 40.96, -5.5);
    expectNear(wellington.s12 ?? Number.NaN, 19_959_679.267354, 1e-6, 'm'); // GeographicLib, Python examples
    // docs.rs geographiclib-rs, the octant's two sides as an open line.
    const sides = [WGS84.Inverse(90, 0, 0, 0), WGS84.Inverse(0, 0, 0, 90)].map(({ s12 = Number.NaN }) => s12);
    expectNear((sides[0] ?? 0) + (sides[1] ?? 0), 20_020_719, 1, 'm');
  });
});

describe('the yard frame gives published distances on the ground', () => {
  test('its ellipsoid is WGS 84, by the radii of curvature it makes of metres', () => {
    // a = 6378137 m, f = 1/298.257223563 (GeographicLib, planimeter.c); from them b = 6356752.314245 m and
    // e² = 0.00669437999014. A metre north or east at the equator and the pole tells them apart.
    const degPerM = (origin: LonLat, xM: number, yM: number): number => {
      const there = yardToLonLat(origin, { xM, yM });
      return Math.hypot(there.latDeg - origin.latDeg, there.lonDeg - origin.lonDeg);
    };
    const radiusM = (origin: LonLat, xM: number, yM: number) =>
      (180 / Math.PI) * (Math.hypot(xM, yM) / degPerM(origin, xM, yM));
    const aM = radiusM(at(0, 0), 100, 0); // along the equator
    const meridianM = radiusM(at(0, 0), 0, 100); // b²/a = a (1 - e²)
    expectNear(aM, 6_378_137, 0.01, 'm'); // as above
    expectNear(Math.sqrt(meridianM * aM), 6_356_752.314245, 0.01, 'm'); // b
    expectNear(1 - meridianM / aM, 0.00669437999014, 2e-9, ''); // e²
  });

  test('a degree of latitude and of longitude at 40° north', () => {
    const origin = at(40, -86);
    // From a thousandth of a degree each way; WGS 84, computed with GeographicLib 2.1.2.
    const north = lonLatToYard(origin, at(40.0005, -86)).yM - lonLatToYard(origin, at(39.9995, -86)).yM;
    expectNear(north * 1000, 111_034.63, 0.01, 'm'); // check value: metres per degree of latitude
    const east = lonLatToYard(origin, at(40, -85.9995)).xM - lonLatToYard(origin, at(40, -86.0005)).xM;
    expectNear(east * 1000, 85_393.86, 0.01, 'm'); // check value: metres per degree of longitude
  });

  test('a yard of 0.0005° by 0.0003°', () => {
    const corners = [at(40, -86), at(40, -85.9995), at(40.0003, -85.9995), at(40.0003, -86)];
    const origin = frameAround(corners);
    const ring = corners.map((corner) => lonLatToYard(origin, corner));
    expectNear(ringPerimeterM(ring), 152.014451, 1e-6, 'm'); // GeographicLib 2.1.2, Planimeter
    expectNear(signedAreaM2(ring) / 0.09290304, 15_308.95, 1e-2, 'ft²'); // same, 1,422.2483 m²
  });
});

describe('grids are not the ground', () => {
  test('a square of 100 km on the UTM grid is not 10,000 km² on earth', () => {
    const corners = [
      [500_000, 4_400_000],
      [600_000, 4_400_000],
      [600_000, 4_500_000],
      [500_000, 4_500_000],
    ];
    const onEarth = corners.map(([x = 0, y = 0]) => toEarth('EPSG:32618', x, y));
    const { areaM2, perimeterM } = geodesicPolygon(onEarth);
    expectNear(perimeterM, 400_139.532959, 1e-6, 'm'); // Planimeter(1), example
    expectNear(areaM2, 10_007_388_597.2, 0.1, 'm²'); // same
  });

  test('Web Mercator puts a place where EPSG says', () => {
    const [x, y] = fromEarth('EPSG:3857', 24 + 22 / 60 + 54.433 / 3600, -(100 + 20 / 60));
    expectNear(x, -11_169_055.58, 0.01, 'm'); // IOGP Guidance Note 7-2, method 1024
    expectNear(y, 2_800_000, 0.01, 'm'); // same
  });

  test.each([
    [25, 1.222719],
    [30, 1.33783],
    [35, 1.493733],
    [40, 1.706096],
    [45, 2.000023],
  ])('at %d° Web Mercator makes a lawn %f times as large', (latDeg, inflation) => {
    const origin = at(latDeg, 7);
    const square = [
      [-5, -5],
      [5, -5],
      [5, 5],
      [-5, 5],
    ].map(([xM = 0, yM = 0]) => ({ xM, yM }));
    const onWeb = square.map((corner) => {
      const place = yardToLonLat(origin, corner);
      const [xM, yM] = fromEarth('EPSG:3857', place.latDeg, place.lonDeg);
      return { xM, yM };
    });
    // a² / (ν ρ cos² φ): k east-west times h north-south, worked out for WGS 84.
    expectNear(signedAreaM2(onWeb) / signedAreaM2(square), inflation, 5e-7, ''); // the same, to its last digit
  });

  test.each([
    [30, 1.154701],
    [35, 1.220775],
    [40, 1.305407],
    [45, Math.SQRT2],
  ])('at %d° it stretches lengths on the sphere by %f', (latDeg, stretch) => {
    const [east] = fromEarth('EPSG:3857', latDeg, 1e-4);
    const onSphere = 6_378_137 * Math.cos((latDeg * Math.PI) / 180) * ((1e-4 * Math.PI) / 180);
    expectNear(east / onSphere, stretch, 5e-7, ''); // sec φ
  });
});

describe('published grid coordinates', () => {
  // IOGP Guidance Note 7-2, Lambert Conic Conformal (2SP): NAD27 / Texas South Central. Its ellipsoid, no datum shift.
  const TEXAS =
    '+proj=lcc +lat_0=27.8333333333333 +lon_0=-99 +lat_1=28.3833333333333 +lat_2=30.2833333333333 ' +
    '+x_0=609601.2192024384 +y_0=0 +ellps=clrk66 +units=us-ft +no_defs';
  const TEXAS_WKT =
    'PROJCS["NAD27 / Texas South Central",GEOGCS["by its ellipsoid",DATUM["on Clarke 1866",' +
    'SPHEROID["Clarke 1866",6378206.4,294.978698213898]],PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433]],' +
    'PROJECTION["Lambert_Conformal_Conic_2SP"],PARAMETER["latitude_of_origin",27.8333333333333],' +
    'PARAMETER["central_meridian",-99],PARAMETER["standard_parallel_1",28.3833333333333],' +
    'PARAMETER["standard_parallel_2",30.2833333333333],PARAMETER["false_easting",2000000],' +
    'PARAMETER["false_northing",0],UNIT["US survey foot",0.304800609601219]]';
  const TEXAS_ESRI =
    'PROJCS["NAD_1927_StatePlane_Texas_South_Central",GEOGCS["GCS_Clarke_1866",DATUM["D_Clarke_1866",' +
    'SPHEROID["Clarke_1866",6378206.4,294.9786982]],PRIMEM["Greenwich",0.0],UNIT["Degree",0.0174532925199433]],' +
    'PROJECTION["Lambert_Conformal_Conic"],PARAMETER["False_Easting",2000000.0],PARAMETER["False_Northing",0.0],' +
    'PARAMETER["Central_Meridian",-99.0],PARAMETER["Standard_Parallel_1",28.38333333333333],' +
    'PARAMETER["Standard_Parallel_2",30.28333333333333],PARAMETER["Latitude_Of_Origin",27.83333333333333],' +
    'UNIT["Foot_US",0.3048006096012192]]';
  const TEXAS_WKT2 =
    'PROJCRS["NAD27 / Texas South Central",BASEGEOGCRS["by its ellipsoid",DATUM["on Clarke 1866",' +
    'ELLIPSOID["Clarke 1866",6378206.4,294.978698213898,LENGTHUNIT["metre",1]]],PRIMEM["Greenwich",0,' +
    'ANGLEUNIT["degree",0.0174532925199433]]],CONVERSION["Texas South Central",METHOD["Lambert Conic Conformal (2SP)",' +
    'ID["EPSG",9802]],PARAMETER["Latitude of false origin",27.8333333333333,ANGLEUNIT["degree",0.0174532925199433]],' +
    'PARAMETER["Longitude of false origin",-99,ANGLEUNIT["degree",0.0174532925199433]],' +
    'PARAMETER["Latitude of 1st standard parallel",28.3833333333333,ANGLEUNIT["degree",0.0174532925199433]],' +
    'PARAMETER["Latitude of 2nd standard parallel",30.2833333333333,ANGLEUNIT["degree",0.0174532925199433]],' +
    'PARAMETER["Easting at false origin",2000000,LENGTHUNIT["US survey foot",0.304800609601219]],' +
    'PARAMETER["Northing at false origin",0,LENGTHUNIT["US survey foot",0.304800609601219]]],CS[Cartesian,2],' +
    'AXIS["easting (X)",east,ORDER[1]],AXIS["northing (Y)",north,ORDER[2]],' +
    'LENGTHUNIT["US survey foot",0.304800609601219]]';

  test.each([
    ['PROJ text', TEXAS],
    ['WKT 1', TEXAS_WKT],
    ['the text of a .prj file', TEXAS_ESRI],
    ['WKT 2', TEXAS_WKT2],
  ])('of NAD27 Texas South Central, from %s, in US survey feet', (_from, crs) => {
    const [x, y] = fromEarth(crs, 28.5, -96);
    expectNear(x, 2_963_503.91, 0.01, 'US survey ft'); // IOGP Guidance Note 7-2, LCC (2SP) example
    expectNear(y, 254_759.8, 0.01, 'US survey ft'); // same
    const back = toEarth(crs, x, y);
    expectNear(back.latDeg, 28.5, 1e-9, '°'); // as given
    expectNear(back.lonDeg, -96, 1e-9, '°');
  });

  test('of the British National Grid, on its ellipsoid', () => {
    const grid =
      '+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +ellps=airy +units=m +no_defs';
    const [x, y] = fromEarth(grid, 50.5, 0.5);
    expectNear(x, 577_274.99, 0.01, 'm'); // IOGP Guidance Note 7-2, transverse Mercator example
    expectNear(y, 69_740.5, 0.01, 'm'); // same
  });
});

describe('survey feet and international feet', () => {
  const zone = (units: string) =>
    `+proj=tmerc +lat_0=37.5 +lon_0=-85.6666666666667 +k=0.999966667 +x_0=0 +y_0=0 +ellps=GRS80 +units=${units}`;

  test('the same two million feet are four feet apart on the ground', () => {
    const [survey, foot] = [zone('us-ft'), zone('ft')].map((crs) => toEarth(crs, 0, 2_000_000)) as [
      LonLat,
      LonLat,
    ];
    const { s12 = 0 } = geographic.Geodesic.WGS84.Inverse(
      survey.latDeg,
      survey.lonDeg,
      foot.latDeg,
      foot.lonDeg,
    );
    // 1200/3937 ÷ 0.3048 = 1.000002 (Federal Register 85:62698): 2 ppm of 2,000,000 ft, over the zone's scale.
    expectNear(s12 / 0.3048, 4 / 0.999966667, 0.001, 'ft');
    expect(survey.latDeg).toBeGreaterThan(foot.latDeg); // the survey foot is the longer one
  });

  test('a state that legislated survey feet and one that legislated international feet keep their own', () => {
    // By definition of the zones: EPSG:2965 Indiana East has 820,208.333 US survey ft at its origin, which is 250,000 m;
    // EPSG:2253 Michigan South has 13,123,359.58 international ft, which is 4,000,000 m.
    const [, indiana] = fromEarth('EPSG:2965', 37.5, -(85 + 40 / 60));
    expectNear(indiana * (1200 / 3937), 250_000, 0.001, 'm');
    const [michigan] = fromEarth('EPSG:2253', 41.5, -(84 + 22 / 60));
    expectNear(michigan * 0.3048, 4_000_000, 0.001, 'm');
  });
});

describe('yards at the ends of the earth', () => {
  const PLACES = [
    ['near the north pole', 89.9, 10],
    ['near the south pole', -89.9, -170],
    ['a kilometre from the pole', 89.991, 45],
    ['at the antimeridian', -17, 179.9999],
    ['just east of it', 65, -179.9999],
    ['where equator and prime meridian cross', 0, 0],
    ['on the Kapiti coast', -40.91, 175.01],
    ['at Cape Horn', -55.98, -67.27],
  ] as const;

  test.each(PLACES)('%s: corners come back to a micrometre', (_where, latDeg, lonDeg) => {
    for (const [xM, yM] of [
      [0, 0],
      [1500, 0],
      [0, -1500],
      [-1000, 1000],
      [0.001, 40],
    ] as const) {
      const there = yardToLonLat({ latDeg, lonDeg }, { xM, yM });
      const back = lonLatToYard({ latDeg, lonDeg }, there);
      expectNear(Math.hypot(back.xM - xM, back.yM - yM), 0, 1e-6, 'm'); // 1e-6 m is what degrees to 1e-14 hold
      expect(Math.abs(there.lonDeg)).toBeLessThanOrEqual(180);
    }
  });

  test.each(PLACES)(
    '%s: a lawn of 60 m by 40 m, and one of 2 km, have the area they have on earth',
    (_where, latDeg, lonDeg) => {
      for (const size of [1, 30]) {
        const ring = [
          [-30, -20],
          [30, -20],
          [30, 20],
          [-30, 20],
        ].map(([xM = 0, yM = 0]) => ({
          xM: xM * size,
          yM: yM * size,
        }));
        const onEarth = ring.map((corner) => yardToLonLat({ latDeg, lonDeg }, corner));
        const origin = frameAround(onEarth);
        const areaM2 = signedAreaM2(onEarth.map((corner) => lonLatToYard(origin, corner)));
        const theirs = geodesicPolygon(onEarth).areaM2;
        expectNear(areaM2, theirs, 1e-7 * theirs + 3e-4, 'm²'); // geographiclib-geodesic; 3e-4 m² is its own rounding
      }
    },
  );

  test('a lawn that has the pole in it has its area', () => {
    const onEarth = [0, 90, 180, -90].map((lonDeg) => at(89.9995, lonDeg));
    const origin = frameAround(onEarth);
    const ring = onEarth.map((corner) => lonLatToYard(origin, corner));
    // A square whose corners are 0.0005° from its middle: 2 r², r by the ellipsoid's radius at the pole, a / (1 - f).
    // (The ellipsoidal programs reckon a ring round the pole from half the globe, which leaves them 0.03 m².)
    const rM = (6_378_137 / (1 - 1 / 298.257223563)) * ((0.0005 * Math.PI) / 180);
    expectNear(Math.abs(signedAreaM2(ring)), 2 * rM * rM, 1e-7 * rM * rM, 'm²');
  });
});
