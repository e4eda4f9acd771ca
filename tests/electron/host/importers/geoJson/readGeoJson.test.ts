import { describe, expect, test } from 'vitest';
import { readGeoJson } from '../../../../../electron/host/importers/geoJson/readGeoJson.ts';

const RING = [
  [-86.2, 39.9],
  [-86.1999, 39.9],
  [-86.1999, 39.9001],
  [-86.2, 39.9001],
  [-86.2, 39.9],
];

function read(value: unknown): ReturnType<typeof readGeoJson> {
  return readGeoJson('yard.geojson', new TextEncoder().encode(JSON.stringify(value)));
}

function feature(properties: object, geometry: unknown): object {
  return { type: 'Feature', properties, geometry };
}

function collection(...features: unknown[]): object {
  return { type: 'FeatureCollection', features };
}

function valueIn<T>(result: { ok: boolean; value?: T; problems?: unknown }): T {
  if (!result.ok || result.value === undefined) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

function factsOf(result: ReturnType<typeof readGeoJson>): unknown[] {
  if (result.ok) throw new Error('it was read');
  return result.problems.map(({ kind, facts }) => ({ kind, ...facts }));
}

describe('outlines from GeoJSON', () => {
  test('take kind and name from the properties, and open rings', () => {
    const polygon = { type: 'Polygon', coordinates: [RING] };
    const { outlines } = valueIn(read(collection(feature({ kind: 'bed', name: 'roses' }, polygon))));
    expect(outlines).toMatchObject([{ kind: 'bed', name: 'roses', holes: [] }]);
    expect(outlines[0]?.outer).toEqual(RING.slice(0, 4).map(([lonDeg, latDeg]) => ({ lonDeg, latDeg })));
  });

  test('are zones without a kind; points without one are landmarks', () => {
    const point = { type: 'Point', coordinates: [-86.2, 39.9, 231.5] };
    const { outlines, marks } = valueIn(
      read(
        collection(
          feature({}, { type: 'Polygon', coordinates: [RING] }),
          feature({ kind: 'spigot' }, point),
          feature({}, point),
        ),
      ),
    );
    expect(outlines.map(({ kind, name }) => [kind, name])).toEqual([['zone', null]]);
    expect(marks.map(({ kind }) => kind)).toEqual(['spigot', 'landmark']);
  });

  test('of several parts are numbered', () => {
    const multi = { type: 'MultiPolygon', coordinates: [[RING], [RING], [RING]] };
    const collected = { type: 'GeometryCollection', geometries: [multi] };
    const { outlines } = valueIn(read(collection(feature({ name: 'verge' }, collected))));
    expect(outlines.map(({ name }) => name)).toEqual(['verge (1 of 3)', 'verge (2 of 3)', 'verge (3 of 3)']);
  });

  test('keep their holes', () => {
    const hole = RING.map(([lon = 0, lat = 0]) => [lon * 0.5 - 43.099975, lat * 0.5 + 19.950025]).reverse();
    const { outlines } = valueIn(read({ type: 'Polygon', coordinates: [RING, hole] }));
    expect(outlines[0]?.holes).toHaveLength(1);
  });

  test('leave lines, empty features and parts of a plan out, and say so', () => {
    const { outlines, notes } = valueIn(
      read(
        collection(
          feature({}, { type: 'Polygon', coordinates: [RING] }),
          feature({}, { type: 'LineString', coordinates: RING }),
          feature({}, null),
          feature({ role: 'section' }, { type: 'Polygon', coordinates: [RING] }),
        ),
      ),
    );
    expect(outlines).toHaveLength(1);
    expect(notes.join(' ')).toMatch(/line.*without a shape.*plan/);
  });

  test('in a named system are brought to longitude and latitude', () => {
    const crs = { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::25833' } };
    const ring = [
      [261590.747, 6652474.874],
      [261597.551, 6652480.314],
      [261617.077, 6652495.94],
      [261590.747, 6652474.874],
    ];
    const { outlines, notes } = valueIn(read({ type: 'Polygon', coordinates: [ring], crs }));
    expect(outlines[0]?.outer[0]?.lonDeg).toBeCloseTo(10.7314158815303, 9); // gdaltransform 3.6.2 -s_srs EPSG:25833 -t_srs EPSG:4326
    expect(outlines[0]?.outer[0]?.latDeg).toBeCloseTo(59.9404843661923, 9); // the same run
    expect(notes.join()).toContain('EPSG:25833');
  });
});

describe('GeoJSON that is broken is refused and the feature named', () => {
  const polygonOf = (coordinates: unknown): object =>
    collection(feature({ name: 'Front lawn' }, { type: 'Polygon', coordinates }));

  test.each([
    ['a ring that is not closed', [RING.slice(0, 4)], 'not closed'],
    ['a ring of three positions', [RING.slice(0, 3)], '3 positions'],
    ['a text for a number', [[['-86.2', 39.9], ...RING.slice(1)]], 'two numbers'],
    ['a null', [[[null, 39.9], ...RING.slice(1)]], 'two numbers'],
    ['a ring that is no list', ['ring'], 'no list'],
    ['a position too deep', [[RING, ...RING.slice(1)]], 'two numbers'],
  ])('%s', (_, coordinates, said) => {
    const [facts] = factsOf(read(polygonOf(coordinates)));
    expect(facts).toMatchObject({ kind: 'file/broken-ring', feature: 'feature 1 (“Front lawn”)' });
    expect(JSON.stringify(facts)).toContain(said);
  });

  test('latitude and longitude exchanged', () => {
    const swapped = RING.map(([lon, lat]) => [lat, lon]);
    expect(factsOf(read(polygonOf([swapped])))).toMatchObject([
      { kind: 'file/coordinates-out-of-range', swappedLikely: true },
    ]);
  });

  test('metres where degrees belong', () => {
    const metres = RING.map(([lon = 0, lat = 0]) => [568000 + lon, 4417000 + lat]);
    expect(factsOf(read(polygonOf([metres])))).toMatchObject([
      { kind: 'file/coordinates-out-of-range', swappedLikely: false },
    ]);
  });

  test('every broken feature is named, up to twenty', () => {
    const broken = Array.from({ length: 500 }, () => feature({}, { type: 'Polygon', coordinates: [[]] }));
    const facts = factsOf(read(collection(...broken)));
    expect(facts).toHaveLength(20); // a longer list is not read by anyone
    expect(facts[19]).toMatchObject({ feature: 'feature 20' });
  });

  test.each([
    ['text that is not JSON', '{"type": "Point"\n "coordinates": 3}', /line 2/],
    ['a file that ends early', '{"type": "Poi', /JSON/],
    ['brackets without end', '['.repeat(100_000), /JSON/],
    ['JSON of another kind', '[1, 2, 3]', /no type/],
    ['a type of its own', '{"type":"Topology"}', /unknown type/],
    ['a collection of collections of collections', nested(100_000), /nested too deep/],
  ])('%s', (_, text, said) => {
    const result = readGeoJson('yard.geojson', new TextEncoder().encode(text));
    expect(JSON.stringify(factsOf(result))).toMatch(said);
  });

  test('bytes that are no text', () => {
    expect(factsOf(readGeoJson('yard.geojson', Uint8Array.of(0x7b, 0xff, 0xfe)))).toMatchObject([
      { kind: 'file/unreadable', detail: 'it is not UTF-8 text' },
    ]);
  });

  test('more corners than a yard can have', () => {
    const ring = Array.from({ length: 200_001 }, (_, at) => [-86.2 + at * 1e-9, 39.9]);
    expect(factsOf(read({ type: 'Polygon', coordinates: [ring] }))).toMatchObject([
      { kind: 'file/unreadable', detail: 'it holds more outlines and corners than a yard can have' },
    ]);
  });

  test('a system that is not known', () => {
    const crs = { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::999999' } };
    expect(factsOf(read({ type: 'Polygon', coordinates: [RING], crs }))).toMatchObject([
      { kind: 'file/unknown-crs' },
    ]);
  });

  test('nothing in it', () => {
    expect(factsOf(read(collection()))).toMatchObject([{ kind: 'file/nothing-in-it' }]);
  });
});

/** A GeometryCollection within a GeometryCollection and so on. */
function nested(depth: number): string {
  return `${'{"type":"GeometryCollection","geometries":['.repeat(depth)}${']}'.repeat(depth)}`;
}
