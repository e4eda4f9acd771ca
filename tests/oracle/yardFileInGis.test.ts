import { tracedRing } from '../../core/curves/index.ts';
import Database from 'better-sqlite3';
import geodesic from 'geographiclib-geodesic';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { applyEdit, putRow } from '../../core/edits/index.ts';
import { yardToLonLat } from '../../core/earth/index.ts';
import type { LonLat } from '../../core/spaces.ts';
import type { Yard } from '../../core/yard.ts';
import type { YardStore } from '../../core/yardFile/index.ts';
import { resolveZones } from '../../core/zones/index.ts';
import { editAt } from '../support/editSeries.ts';
import { expectNear } from '../support/expectNear.ts';
import { gdal, validateGeoPackage } from '../support/gis.ts';
import { randomYard, seededRandom, yardOutlines } from '../support/randomYards.ts';
import { fullYard, moveCorner, PLACED, point, rectOutline, SKETCH } from '../support/storedYards.ts';
import { type YardFolder, yardFolder } from '../support/yardFolder.ts';
import { valueIn } from '../support/yardStoreContract.ts';

/** The promise of the yard file: what a GIS measures is what we say, to a part in a million. */
const AREA_TOLERANCE = 1e-6;

let place: YardFolder;
beforeAll(() => {
  place = yardFolder();
});
afterAll(() => place.leave());

/** A yard that has been worked on: sixty edits, a few taken back, the frame lifted and laid down again. */
function workedOn(name: string, frame: Yard['details']['frame']): { path: string; yard: Yard } {
  const store = valueIn(place.create(name, fullYard(), [SKETCH]));
  let yard = fullYard();
  for (let n = 1; n <= 60; n += 1) {
    const edit = editAt(yard, n);
    valueIn(store.applyEdit(edit, []));
    yard = applyEdit(yard, edit);
  }
  const loose = { ...yard.details, frame: { kind: 'loose' as const } };
  valueIn(store.applyEdit({ label: 'lift', changes: [putRow(yard, 'details', loose)] }, []));
  if (frame.kind === 'placed') store.undo();
  const read = valueIn(store.readYard());
  store.close();
  return { path: place.path(name), yard: read };
}

describe.each([
  ['placed', PLACED],
  ['loose', { kind: 'loose' as const }],
])('a %s yard', (name, frame) => {
  let path: string;
  let yard: Yard;
  beforeAll(() => {
    ({ path, yard } = workedOn(name, frame));
  });

  test('is read whole by GDAL without a word of complaint', () => {
    const { out, err } = gdal('ogrinfo', '-al', path);
    expect(err).toBe('');
    expect(out).not.toMatch(/warning|error/i);
    for (const { name: title } of [...yard.outlines, ...yard.marks]) expect(out).toContain(`= ${title}\n`);
  });

  test("conforms to the standard by GDAL's validator, spatial index and all", () => {
    const { out, err } = validateGeoPackage(path);
    expect(out + err).not.toMatch(/error|warning|failed/i);
  });

  test('has a spatial index that SQLite finds in order and that says where each feature is', () => {
    const db = new Database(path, { readonly: true });
    expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(db.pragma('foreign_key_check')).toStrictEqual([]);
    for (const table of ['zones', 'cut_outs', 'keep_offs', 'check_plots', 'marks']) {
      expect(db.prepare(`SELECT rtreecheck('rtree_${table}_geom')`).pluck().get()).toBe('ok');
      const ids = db.prepare(`SELECT fid FROM ${table} ORDER BY fid`).pluck().all();
      expect(db.prepare(`SELECT id FROM rtree_${table}_geom ORDER BY id`).pluck().all()).toStrictEqual(ids);
    }
    db.close();
    // rectOutline('z2') spans -40..-20 by 0..20, and nothing else reaches west of -39.5.
    const { out } = gdal('ogrinfo', '-q', path, 'zones', '-spat', '-40.5', '1', '-39.5', '2');
    expect(out.match(/ id \(String\) = \w+/g)).toStrictEqual([' id (String) = z2']);
  });
});

describe('areas', () => {
  test('of zones, as a GIS measures them, are the gross areas in the column', () => {
    const { path } = workedOn('areas', PLACED);
    const rows = query(path, 'SELECT id, gross_area_m2 AS ours, ST_Area(geom) AS theirs FROM zones');
    expect(rows.length).toBeGreaterThan(2);
    for (const { ours, theirs } of rows)
      expectNear(Number(ours), Number(theirs), AREA_TOLERANCE * Number(theirs), 'm2');
  });

  test('of turf on random yards are what GEOS leaves when it takes the cut-outs away', () => {
    for (let seed = 1; seed <= 8; seed += 1) {
      const outlines = yardOutlines(randomYard(seededRandom(seed), 30, 8)).map((row, i) => ({
        ...row,
        id: `o${i}`,
      }));
      const path = `random-${seed}`;
      valueIn(place.create(path, { ...fullYard(), outlines }, [])).close();
      const [row] = query(
        place.path(path),
        `SELECT z.turf_area_m2 AS ours,
           ST_Area(ST_Difference(z.geom, (SELECT ST_Union(c.geom) FROM cut_outs c))) AS theirs FROM zones z`,
      );
      expectNear(Number(row?.ours), Number(row?.theirs), AREA_TOLERANCE * Number(row?.theirs), 'm2');
    }
  });

  test('are those of the yard after every edit, undo and redo, and empty while an outline crosses itself', () => {
    const store = valueIn(place.create('live', fullYard(), []));
    valueIn(store.applyEdit(moveCorner(fullYard(), 'z1', point(-4, -5)), []));
    expectAreasOf(store, 'live');
    valueIn(store.applyEdit(moveCorner(valueIn(store.readYard()), 'b1', point(2.5, 2.2)), []));
    expectAreasOf(store, 'live');
    store.undo();
    expectAreasOf(store, 'live');
    // The first corner of the 30.1 by 20.7 rectangle pulled past its far side: two edges cross.
    valueIn(store.applyEdit(moveCorner(valueIn(store.readYard()), 'z1', point(40, 10)), []));
    expect(areasIn('live')).toStrictEqual([
      { id: 'z1', gross_area_m2: null, turf_area_m2: null, treated_area_m2: null },
      { id: 'z2', gross_area_m2: null, turf_area_m2: null, treated_area_m2: null },
      { id: 'z3', gross_area_m2: null, turf_area_m2: null, treated_area_m2: null },
    ]);
    store.undo();
    expectAreasOf(store, 'live');
    store.close();
  });

  test('of a placed yard on the ellipsoid, through GDAL and a geodesic planimeter, are ours', () => {
    const { path } = workedOn('earth', PLACED);
    const areas = new Map(
      query(path, 'SELECT id, gross_area_m2 AS area FROM zones').map((row) => [row.id, row.area]),
    );
    for (const { id, rings } of lonLatsOf(path, 'zones')) {
      const [outer = 0, ...holes] = rings.map(geodesicAreaM2);
      const onEarthM2 = outer - holes.reduce((sum, hole) => sum + hole, 0);
      expectNear(Number(areas.get(id)), onEarthM2, AREA_TOLERANCE * onEarthM2, 'm2');
    }
  });
});

describe('place', () => {
  test.each([
    ['in the northern Rockies', -105.08123456789, 40.58765432101],
    ['far south', 145.3, -42.75],
    ['near the date line', 179.9995, 12.5],
    ['high north', 20.1, 69.6],
  ])('a yard %s lies where core/frame says, to a tenth of a millimetre', (name, lonDeg, latDeg) => {
    const origin = { lonDeg, latDeg };
    const yard = fullYard({ kind: 'placed', origin });
    const far = rectOutline('far', 'zone', 900, -1200, 50, 40);
    valueIn(place.create(name, { ...yard, outlines: [...yard.outlines, far] }, [])).close();
    const found = lonLatsOf(place.path(name), 'zones');
    expect(found.map((row) => row.id)).toStrictEqual(['z1', 'z2', 'z3', 'far']);
    for (const { id, rings } of found) {
      const outline = id === 'far' ? far : yard.outlines.find((row) => row.id === id);
      (outline ? tracedRing(outline.outer) : []).forEach((corner, i) => {
        const expected = yardToLonLat(origin, corner);
        const there = rings[0]?.[i] as LonLat;
        expectNear(distanceM(there, expected), 0, 1e-4, 'm');
      });
    }
  });
});

describe('an owner who works on the file in a GIS', () => {
  test('finds a renamed zone renamed, a moved mark moved and a new bed there', () => {
    valueIn(place.create('owner', fullYard(), [SKETCH])).close();
    const path = place.path('owner');
    const change = (sql: string) => gdal('ogrinfo', '-update', path, '-sql', sql);
    expect(change("UPDATE zones SET name = 'Back lawn' WHERE id = 'z2'").err).toBe('');
    expect(
      change(
        "INSERT INTO cut_outs (id, name, kind, sort_order, geom) SELECT 'gis1', 'rose bed', 'bed', 999999, geom FROM check_plots",
      ).err,
    ).toBe('');
    expect(
      change("UPDATE marks SET geom = (SELECT geom FROM marks WHERE id = 'm2') WHERE id = 'm1'").err,
    ).toBe('');

    const store = valueIn(place.open('owner'));
    const yard = valueIn(store.readYard());
    const before = fullYard();
    expect(yard.outlines).toStrictEqual([
      ...before.outlines.map((row) => (row.id === 'z2' ? { ...row, name: 'Back lawn' } : row)),
      { ...before.outlines[4], id: 'gis1', kind: 'bed', name: 'rose bed' },
    ]);
    expect(yard.marks[0]?.at).toStrictEqual(before.marks[1]?.at);
    valueIn(store.applyEdit(moveCorner(yard, 'gis1', point(-39.5, 1)), []));
    store.close();
    expect(validateGeoPackage(path).out).not.toMatch(/error|warning|failed/i);
  });

  test('finds a curved edge curved after a new name, and as it was put there after a new geometry', () => {
    valueIn(place.create('curved', fullYard(), [SKETCH])).close();
    const change = (sql: string) => gdal('ogrinfo', '-update', place.path('curved'), '-sql', sql).err;
    expect(change("UPDATE zones SET name = 'Oak' WHERE id = 'z3'")).toBe('');
    expect(change("UPDATE cut_outs SET geom = (SELECT geom FROM check_plots) WHERE id = 't1'")).toBe('');

    const store = valueIn(place.open('curved'));
    const { outlines } = valueIn(store.readYard());
    store.close();
    const before = fullYard().outlines;
    const plot = before.find(({ id }) => id === 'c1');
    expect(outlines).toStrictEqual(
      before.map((row) => {
        if (row.id === 'z3') return { ...row, name: 'Oak' };
        return row.id === 't1' ? { ...row, outer: plot?.outer } : row;
      }),
    );
  });
});

function query(path: string, sql: string): Record<string, unknown>[] {
  const { out, err } = gdal(
    'ogr2ogr',
    '-f',
    'GeoJSON',
    '/vsistdout/',
    path,
    '-dialect',
    'SQLITE',
    '-sql',
    sql,
  );
  expect(err).toBe('');
  return (JSON.parse(out) as { features: { properties: Record<string, unknown> }[] }).features.map(
    (feature) => feature.properties,
  );
}

/** The outlines of a layer as GDAL puts them on earth. */
function lonLatsOf(path: string, layer: string): { id: string; rings: LonLat[][] }[] {
  const args = [
    '-f',
    'GeoJSON',
    '/vsistdout/',
    path,
    layer,
    '-t_srs',
    'EPSG:4326',
    '-lco',
    'COORDINATE_PRECISION=15',
  ];
  const { out, err } = gdal('ogr2ogr', ...args);
  expect(err).toBe('');
  const { features } = JSON.parse(out) as {
    features: { properties: { id: string }; geometry: { coordinates: [number, number][][] } }[];
  };
  return features.map(({ properties, geometry }) => ({
    id: properties.id,
    rings: geometry.coordinates.map((ring) =>
      ring.slice(0, -1).map(([lonDeg, latDeg]) => ({ lonDeg, latDeg })),
    ),
  }));
}

function geodesicAreaM2(ring: readonly LonLat[]): number {
  const polygon = geodesic.Geodesic.WGS84.Polygon(false);
  for (const { lonDeg, latDeg } of ring) polygon.AddPoint(latDeg, lonDeg);
  return Math.abs(polygon.Compute(false, true).area as number);
}

function distanceM(a: LonLat, b: LonLat): number {
  return geodesic.Geodesic.WGS84.Inverse(a.latDeg, a.lonDeg, b.latDeg, b.lonDeg).s12 as number;
}

function areasIn(name: string): unknown[] {
  const db = new Database(place.path(name), { readonly: true });
  const rows = db
    .prepare('SELECT id, gross_area_m2, turf_area_m2, treated_area_m2 FROM zones ORDER BY sort_order')
    .all();
  db.close();
  return rows;
}

function expectAreasOf(store: YardStore, name: string): void {
  const { zones } = valueIn(resolveZones(valueIn(store.readYard())));
  expect(areasIn(name)).toStrictEqual(
    zones.map(({ zoneId, grossAreaM2, turfAreaM2, treatedAreaM2 }) => ({
      id: zoneId,
      gross_area_m2: grossAreaM2,
      turf_area_m2: turfAreaM2,
      treated_area_m2: treatedAreaM2,
    })),
  );
}
