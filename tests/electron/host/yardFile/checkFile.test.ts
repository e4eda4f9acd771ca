import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createYardFile, openYardFile } from '../../../../electron/host/yardFile/index.ts';
import { fullYard, moveCorner, point, SKETCH } from '../../../support/storedYards.ts';
import { type YardFolder, yardFolder } from '../../../support/yardFolder.ts';
import { kindOf, valueIn } from '../../../support/yardStoreContract.ts';

let place: YardFolder;
let path: string;

beforeEach(() => {
  place = yardFolder();
  path = place.path('garden');
  const store = valueIn(createYardFile(path, fullYard(), [SKETCH]));
  valueIn(store.applyEdit(moveCorner(fullYard(), 'z1', point(1, 1)), []));
  store.close();
});
afterEach(() => place.leave());

/** What a hostile hand could do: SQLite without any of its defences. */
function spoil(...statements: string[]): void {
  const db = new Database(path);
  db.unsafeMode(true);
  for (const name of ['ST_MinX', 'ST_MaxX', 'ST_MinY', 'ST_MaxY', 'ST_IsEmpty']) {
    db.function(name, (_geom: unknown) => 0);
  }
  db.pragma('writable_schema = ON');
  db.pragma('synchronous = OFF');
  db.pragma('journal_mode = OFF');
  for (const sql of statements) db.exec(sql);
  db.close();
}

function detailOfOpening(): string {
  const opened = openYardFile(path);
  if (opened.ok) throw new Error('opened');
  const [problem] = opened.problems;
  return problem.kind === 'file/damaged' ? problem.facts.detail : problem.kind;
}

describe('a schema that is not ours is refused at the door', () => {
  test.each([
    ['CREATE TRIGGER evil AFTER UPDATE ON zones BEGIN DELETE FROM marks; END', 'evil'],
    ['CREATE TRIGGER evil AFTER INSERT ON ZoNeS BEGIN DELETE FROM marks; END', 'evil'],
    ['CREATE TRIGGER evil AFTER INSERT ON edits BEGIN DELETE FROM edits; END', 'evil'],
    ['CREATE TRIGGER evil AFTER UPDATE ON gpkg_contents BEGIN DELETE FROM marks; END', 'evil'],
    [
      "UPDATE sqlite_schema SET sql = replace(sql, 'rtree_zones_geom WHERE', 'marks WHERE') WHERE name = 'rtree_zones_geom_delete'",
      'rtree_zones_geom_delete',
    ],
    ['DROP TRIGGER rtree_zones_geom_insert', 'rtree_zones_geom_insert'],
    ['DROP TABLE marks; CREATE VIEW marks AS SELECT * FROM zones', 'marks is a view'],
    ['DROP TABLE jobs', 'jobs is missing'],
    ['ALTER TABLE jobs DROP COLUMN policy', 'jobs.policy is missing'],
    ['ALTER TABLE jobs RENAME COLUMN policy TO p; ALTER TABLE jobs ADD COLUMN policy BLOB', 'jobs.policy'],
    [
      "ALTER TABLE jobs RENAME COLUMN policy TO p; ALTER TABLE jobs ADD COLUMN policy TEXT AS ('even') VIRTUAL",
      'jobs.policy',
    ],
    ['DROP TABLE jobs; CREATE VIRTUAL TABLE jobs USING fts5(id, name)', 'jobs is not the table'],
    [
      'DROP TABLE rtree_marks_geom; CREATE TABLE rtree_marks_geom (id, minx, maxx, miny, maxy)',
      'rtree_marks_geom',
    ],
    ['DELETE FROM yard_version', 'yard_version'],
    ["UPDATE yard_version SET schema_version = 'one'", 'yard_version'],
    ['UPDATE yard_version SET schema_version = 0', 'yard_version'],
    ['INSERT INTO yard_version (schema_version, edit_sequence) VALUES (1, 1)', 'yard_version'],
    [
      'DROP TABLE yard_version; CREATE VIEW yard_version AS SELECT 1 AS schema_version, 1 AS edit_sequence',
      'yard_version',
    ],
    [
      'DROP TABLE yard_version; CREATE VIEW yard_version AS WITH RECURSIVE n(x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM n) SELECT x AS schema_version FROM n WHERE x < 0',
      'yard_version is a view',
    ],
  ])('%s', (sql, named) => {
    spoil(sql);
    expect(detailOfOpening()).toContain(named);
  });
});

describe('values too big to be true are refused without being read', () => {
  test.each([
    ['UPDATE pictures SET placement = zeroblob(70000000)', 'pictures: a placement of more than 64 MB'],
    ['UPDATE products SET name = hex(zeroblob(40000000))', 'products: a name of more than 64 MB'],
    ['UPDATE edits SET changes = hex(zeroblob(40000000))', 'edits: a changes of more than 64 MB'],
  ])('%s', (sql, detail) => {
    spoil(sql);
    expect(detailOfOpening()).toBe(detail);
  });
});

describe('rows that make no sense are damage, named by table and row, and never a crash', () => {
  const NAN_POINT = "x'47500001ffffffff0101000000000000000000f87f0000000000000000'";
  test.each([
    ["UPDATE zones SET geom = x'00'", 'zones z1: not a GeoPackage geometry'],
    ["UPDATE zones SET geom = 'text'", 'zones z1: has no geometry'],
    [`UPDATE zones SET geom = ${NAN_POINT}`, 'zones z1: geometry type 1 where 3 belongs'],
    [`UPDATE marks SET geom = ${NAN_POINT}`, 'marks m1: a coordinate is not a finite number'],
    [
      "UPDATE zones SET geom = x'47500001ffffffff0103000000ffffffffffffffff'",
      'zones z1: the geometry ends too soon',
    ],
    ["UPDATE cut_outs SET kind = 'swamp'", 'cut_outs b1: kind is none of'],
    ["UPDATE marks SET kind = 'zone'", 'marks m1: kind is none of'],
    ["UPDATE zones SET traced = '{' WHERE id = 'z3'", 'zones z3: is not JSON text'],
    [
      "UPDATE zones SET traced = 'null' WHERE id = 'z3'",
      'zones z3: outer is none of corners, circle, ellipse',
    ],
    ["UPDATE zones SET traced = '[]' WHERE id = 'z3'", 'zones z3: outer is none of corners, circle, ellipse'],
    [
      `UPDATE zones SET traced = '{"outer":{"kind":"corners","corners":[]},"holes":[],"id":"z1"}' WHERE id = 'z3'`,
      'zones z3: the text of its curves holds more than rings',
    ],
    [
      `UPDATE zones SET traced = '{"outer":{"kind":"circle","centre":{"xM":0,"yM":0},"radiusM":1e999},"holes":[]}' WHERE id = 'z3'`,
      'zones z3: outer radiusM is not a finite number',
    ],
    [
      `UPDATE zones SET traced = '{"outer":{"kind":"corners","corners":[{"xM":0,"yM":0,"run":{"kind":"spiral"}}]},"holes":[]}' WHERE id = 'z3'`,
      'zones z3: outer corners entry 1 run is none of arc, smooth',
    ],
    [
      `UPDATE zones SET slope = '{"kind":"grade","grade":"steep"}' WHERE id = 'z3'`,
      'zones z3: slope grade is not a finite number',
    ],
    ["UPDATE zones SET placed_by = 'dowsing' WHERE id = 'z3'", 'zones z3: placing by is none of'],
    [
      "UPDATE zones SET claims_overlaps = 2 WHERE id = 'z3'",
      'zones z3: claimsOverlaps is none of true, false',
    ],
    ["UPDATE elevations SET heights_mm = '[1,2]'", 'elevations e1: does not have 6 heights'],
    ['UPDATE elevations SET grid_rows = 1', 'elevations e1: is less than one cell'],
    ["UPDATE elevations SET corners = '[]'", 'elevations e1: corners does not have 4 entries'],
    ["UPDATE field_checks SET taped_m = 'far'", 'field_checks x1: tapedM is not a finite number'],
    ["UPDATE yard_details SET overlap_rule = 'mine'", 'yard_details : overlapRule is none of'],
    ["UPDATE yard_details SET amounts_by = 'eye'", 'yard_details : amountsBy is none of plan, surface'],
    ["UPDATE jobs SET zone_ids = '[1'", 'jobs j1: is not JSON text'],
    ["UPDATE jobs SET zone_ids = '{}'", 'jobs j1: zoneIds is not a list'],
    ['UPDATE pictures SET placement = \'{"kind":"scaled"}\'', 'pictures p1: placement has no lengths'],
    ['UPDATE pictures SET placement = \'{"kind":"toString"}\'', 'pictures p1: placement is none of'],
    ["UPDATE yard_details SET frame_kind = 'moon'", 'yard_details : frame is none of placed, loose'],
    [
      'UPDATE yard_details SET origin_lat_deg = NULL',
      'yard_details : frame origin latDeg is not a finite number',
    ],
    [
      "UPDATE yard_details SET ground_date = 'spring'",
      'yard_details : groundDate is not a date as yyyy-mm-dd',
    ],
    ['UPDATE products SET rate_l_per_m2 = 9e999', 'products f1: rateLPerM2 is not a finite number'],
    ["UPDATE products SET rate_l_per_m2 = 'much'", 'products f1: rateLPerM2 is not a finite number'],
    ['DELETE FROM yard_details', 'yard_details does not hold one row'],
    [
      'INSERT INTO yard_details SELECT 2, name, ground_date, unit_system, frame_kind, origin_lon_deg, origin_lat_deg, corner_sigma_m, overlap_rule, amounts_by FROM yard_details',
      'details: an id is there twice',
    ],
    ["UPDATE check_plots SET id = 'z1'", 'outlines: an id is there twice'],
  ])('%s', (sql, detail) => {
    spoil(sql);
    const store = valueIn(openYardFile(path));
    const read = store.readYard();
    store.close();
    expect(read.ok ? null : read.problems[0]).toMatchObject({
      kind: 'file/damaged',
      where: { fileName: 'garden.gpkg' },
      facts: { detail: expect.stringContaining(detail) },
    });
  });

  test.each([
    ["UPDATE edits SET changes = '[{]'"],
    ['UPDATE edits SET changes = \'[{"part":"constructor","id":"x","index":0,"before":null,"after":{}}]\''],
    ["UPDATE edits SET changes = '[null]'"],
    ["UPDATE edits SET changes = '[' || replace(hex(zeroblob(100000)), '0', '[') || ']'"],
  ])('an undo step that is no edit: %s', (sql) => {
    spoil(sql);
    const store = valueIn(openYardFile(path));
    const before = valueIn(store.readYard());
    expect(kindOf(store.undo())).toBe('file/damaged');
    expect(valueIn(store.readYard())).toStrictEqual(before);
    store.close();
  });

  test('an edit that hits a broken row is refused as damage', () => {
    spoil("UPDATE zones SET geom = x'00' WHERE id = 'z2'");
    const store = valueIn(openYardFile(path));
    expect(kindOf(store.applyEdit(moveCorner(fullYard(), 'z2', point(0, 0)), []))).toBe('file/damaged');
    store.close();
  });
});

describe('what the owner adds with other programs does no harm', () => {
  test('further tables, views, columns and their triggers are left alone', () => {
    spoil(
      'CREATE TABLE notes (fid INTEGER PRIMARY KEY, note TEXT)',
      "CREATE TRIGGER notes_new AFTER INSERT ON notes BEGIN UPDATE notes SET note = 'x'; END",
      'CREATE VIEW big_zones AS SELECT * FROM zones WHERE gross_area_m2 > 100',
      "ALTER TABLE zones ADD COLUMN soil TEXT DEFAULT 'clay'",
      'CREATE INDEX zones_by_name ON zones (name)',
    );
    const store = valueIn(openYardFile(path));
    const yard = valueIn(store.readYard());
    valueIn(store.applyEdit(moveCorner(yard, 'z1', point(2, 2)), []));
    store.close();
    const db = new Database(path, { readonly: true });
    expect(db.prepare("SELECT soil FROM zones WHERE id = 'z1'").pluck().get()).toBe('clay');
    db.close();
  });

  test('a spatial index dropped whole is done without', () => {
    const triggers = ['insert', 'update1', 'update2', 'update3', 'update4', 'delete'];
    spoil(...triggers.map((name) => `DROP TRIGGER rtree_zones_geom_${name}`), 'DROP TABLE rtree_zones_geom');
    const store = valueIn(openYardFile(path));
    valueIn(store.applyEdit(moveCorner(valueIn(store.readYard()), 'z1', point(2, 2)), []));
    store.close();
  });

  test('a past revision of a feature is not part of the yard of today', () => {
    spoil(
      "INSERT INTO zones (id, name, placed_by, claims_overlaps, sort_order, revision_from, revision_to, geom) SELECT id, 'before the pool', placed_by, claims_overlaps, 1, 1, 2, geom FROM zones WHERE id = 'z1'",
      "UPDATE zones SET revision_from = 2 WHERE id = 'z1' AND revision_to IS NULL",
    );
    const store = valueIn(openYardFile(path));
    expect(valueIn(store.readYard()).outlines.map((row) => row.name)).not.toContain('before the pool');
    store.close();
  });
});
