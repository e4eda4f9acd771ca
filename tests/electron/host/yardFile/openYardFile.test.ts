import { tracedRing } from '../../../../core/curves/index.ts';
import { mkdirSync, readdirSync, readFileSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { SCHEMA_VERSION, type YardStore } from '../../../../core/yardFile/index.ts';
import { createYardFile, openYardFile } from '../../../../electron/host/yardFile/index.ts';
import { fullYard, imageOf, moveCorner, point, SKETCH } from '../../../support/storedYards.ts';
import { type YardFolder, yardFolder } from '../../../support/yardFolder.ts';
import { kindOf, valueIn } from '../../../support/yardStoreContract.ts';

let place: YardFolder;
let path: string;

beforeEach(() => {
  place = yardFolder();
  path = place.path('garden');
});
afterEach(() => place.leave());

function create(): YardStore {
  return valueIn(createYardFile(path, fullYard(), [SKETCH]));
}

/** Asserts that both ways of opening say the same and that the file is left as it was. */
function expectRefused(kind: string): void {
  const before = readFileSync(path);
  expect(kindOf(openYardFile(path))).toBe(kind);
  expect(kindOf(openYardFile(path, { readOnly: true }))).toBe(kind);
  expect(readFileSync(path).equals(before)).toBe(true);
  expect(readdirSync(place.folder)).toStrictEqual(['garden.gpkg']);
}

/** Does to the file what a person with SQLite's shell could do. */
function meddle(...statements: string[]): void {
  const db = new Database(path);
  db.unsafeMode(true);
  for (const sql of statements) db.exec(sql);
  db.close();
}

test('text is not a yard', () => {
  writeFileSync(path, 'Dear diary, today I mowed the lawn. '.repeat(100));
  expectRefused('file/not-a-yard');
});

test('an empty file is not a yard', () => {
  writeFileSync(path, '');
  expectRefused('file/not-a-yard');
});

test('a folder is not a yard', () => {
  mkdirSync(path);
  expect(kindOf(openYardFile(path))).toBe('file/not-a-yard');
});

test('a file that is not there is not found', () => {
  expect(kindOf(openYardFile(path))).toBe('file/not-found');
  expect(kindOf(openYardFile(join(place.folder, 'no', 'such', 'folder.gpkg')))).toBe('file/not-found');
});

test('a database of another program is not a yard', () => {
  const db = new Database(path);
  db.exec('CREATE TABLE yard_version (schema_version INTEGER); INSERT INTO yard_version VALUES (1)');
  db.close();
  expectRefused('file/not-a-yard');
});

test('a GeoPackage of another program is not a yard', () => {
  const db = new Database(path);
  db.pragma('application_id = 0x47504b47');
  db.exec('CREATE TABLE gpkg_contents (table_name TEXT)');
  db.close();
  expectRefused('file/not-a-yard');
});

test('a yard of a newer version is refused and left untouched', () => {
  create().close();
  meddle(`UPDATE yard_version SET schema_version = ${SCHEMA_VERSION + 1}`);
  expectRefused('file/newer-version');
});

test('a yard of a newer version is refused whatever its tables look like', () => {
  create().close();
  meddle(`UPDATE yard_version SET schema_version = ${SCHEMA_VERSION + 1}`, 'DROP TABLE marks');
  expectRefused('file/newer-version');
});

test('a file cut in half is damaged', () => {
  create().close();
  truncateSync(path, Math.floor(readFileSync(path).length / 2));
  expectRefused('file/damaged');
});

test('a file cut at any page, or anywhere in one, is refused and never opens', () => {
  create().close();
  const whole = readFileSync(path);
  for (let length = 1; length < whole.length; length += 2_049) {
    writeFileSync(path, whole.subarray(0, length));
    expect(['file/damaged', 'file/not-a-yard']).toContain(kindOf(openYardFile(path)));
  }
});

test('a file with pages overwritten with noise is damaged, or opens and reads without a crash', () => {
  create().close();
  const whole = readFileSync(path);
  const outcomes = new Set<string>();
  for (let at = 100; at < whole.length; at += 4_096) {
    const spoilt = Buffer.from(whole);
    for (let i = 0; i < 400 && at + i < spoilt.length; i += 1) spoilt[at + i] = (i * 167 + at * 31) & 0xff;
    writeFileSync(path, spoilt);
    const opened = openYardFile(path);
    const read = opened.ok ? opened.value.readYard() : opened;
    outcomes.add(kindOf(read) ?? 'read');
    if (opened.ok) opened.value.close();
  }
  expect([...outcomes].filter((kind) => kind !== 'read' && kind !== 'file/not-a-yard')).toStrictEqual([
    'file/damaged',
  ]);
});

test('a second opener is told the yard is open elsewhere, and may look', () => {
  const first = create();
  expect(kindOf(openYardFile(path))).toBe('file/locked');
  const reader = valueIn(openYardFile(path, { readOnly: true }));
  valueIn(first.applyEdit(moveCorner(fullYard(), 'z1', point(1, 1)), []));
  const [moved] = valueIn(reader.readYard()).outlines;
  expect(moved && tracedRing(moved.outer)[0]).toStrictEqual(point(1, 1));
  reader.close();
  first.close();
  const second = valueIn(openYardFile(path));
  expect(second.readOnly).toBe(false);
  second.close();
});

test('while another program holds the file, an edit is refused as locked and can be made afterwards', () => {
  const store = create();
  const other = new Database(path);
  other.exec('BEGIN IMMEDIATE');
  const edit = moveCorner(fullYard(), 'z1', point(1, 1));
  expect(kindOf(store.applyEdit(edit, []))).toBe('file/locked');
  other.exec('ROLLBACK');
  other.close();
  expect(valueIn(store.applyEdit(edit, [])).sequence).toBe(1);
  store.close();
});

test('a yard that a GIS left in WAL mode is opened, and is one file again when closed', () => {
  create().close();
  meddle('PRAGMA journal_mode = WAL');
  const store = valueIn(openYardFile(path));
  valueIn(store.applyEdit(moveCorner(fullYard(), 'z1', point(1, 1)), []));
  store.close();
  expect(readdirSync(place.folder)).toStrictEqual(['garden.gpkg']);
});

test('a yard that a GIS has open in WAL mode is locked, and can be looked at', () => {
  create().close();
  const gis = new Database(path);
  gis.pragma('journal_mode = WAL');
  gis.exec("UPDATE products SET name = 'in the GIS'");
  expect(kindOf(openYardFile(path))).toBe('file/locked');
  const reader = valueIn(openYardFile(path, { readOnly: true }));
  expect(valueIn(reader.readYard()).products[0]?.name).toBe('in the GIS');
  reader.close();
  gis.close();
  valueIn(openYardFile(path)).close();
});

test.each([false, true])('an edit torn by a crash is taken back on opening (read only: %s)', (readOnly) => {
  create().close();
  const whole = readFileSync(path);
  const db = new Database(path);
  db.pragma('cache_size = 1'); // so that pages go to the file, and old ones to the journal, before the end
  db.exec(
    'BEGIN; CREATE TABLE torn (x); INSERT INTO torn SELECT zeroblob(100000); UPDATE products SET name = 1',
  );
  // What a process that dies here leaves behind: the file half written, and its journal.
  const [torn, journal] = [readFileSync(path), readFileSync(`${path}-journal`)];
  db.close();
  expect(torn.equals(whole)).toBe(false);
  writeFileSync(path, torn);
  writeFileSync(`${path}-journal`, journal);
  const store = valueIn(openYardFile(path, { readOnly }));
  expect(valueIn(store.readYard())).toStrictEqual(fullYard());
  store.close();
  expect(readdirSync(place.folder)).toStrictEqual(['garden.gpkg']);
});

test('a closed yard is one file, with nothing beside it', () => {
  const store = create();
  valueIn(store.applyEdit(moveCorner(fullYard(), 'z1', point(1, 1)), []));
  store.close();
  expect(readdirSync(place.folder)).toStrictEqual(['garden.gpkg']);
});

test('opening, reading and closing leaves the file identical', () => {
  create().close();
  const before = readFileSync(path);
  const store = valueIn(openYardFile(path));
  valueIn(store.readYard());
  valueIn(store.readImage(SKETCH.imageHash));
  store.close();
  expect(readFileSync(path).equals(before)).toBe(true);
});

test('save, open, save: a yard written again from what was read has the same rows in every table', () => {
  create().close();
  const store = valueIn(openYardFile(path));
  valueIn(createYardFile(place.path('again'), valueIn(store.readYard()), [SKETCH])).close();
  store.close();
  expect(dump(place.path('again'))).toStrictEqual(dump(path));
});

test('a yard another program writes to in the background is seen as it is now', () => {
  const store = create();
  meddle("UPDATE products SET name = 'renamed outside'");
  expect(valueIn(store.readYard()).products[0]?.name).toBe('renamed outside');
  store.close();
});

test('a trigger slipped in while the yard is open is met before it runs; a harmless table is not', () => {
  const store = create();
  meddle('CREATE TABLE notes (note TEXT)');
  const first = moveCorner(fullYard(), 'z1', point(1, 1));
  expect(valueIn(store.applyEdit(first, [])).sequence).toBe(1);
  meddle('CREATE TRIGGER evil AFTER UPDATE ON zones BEGIN DELETE FROM marks; END');
  const yard = valueIn(store.readYard());
  expect(kindOf(store.applyEdit(moveCorner(yard, 'z1', point(2, 2)), []))).toBe('file/damaged');
  expect(kindOf(store.undo())).toBe('file/damaged');
  expect(valueIn(store.readYard())).toStrictEqual(yard);
  store.close();
});

test('a yard reached by a link is the same yard', () => {
  const store = create();
  symlinkSync(path, place.path('link'));
  expect(kindOf(openYardFile(place.path('link')))).toBe('file/locked');
  store.close();
});

test('an image whose bytes are not those of its hash is refused', () => {
  const lying = { ...imageOf(Uint8Array.of(1, 2, 3)), imageHash: 'ab'.repeat(32) };
  expect(kindOf(createYardFile(path, fullYard(), [lying]))).toBe('host/bad-request');
  const store = create();
  expect(kindOf(store.applyEdit({ label: '', changes: [] }, [lying]))).toBe('host/bad-request');
  meddle("UPDATE images SET bytes = x'00'");
  expect(kindOf(store.readImage(SKETCH.imageHash))).toBe('file/damaged');
  store.close();
});

/** Every row of every table, the time of last change apart. */
function dump(file: string): unknown {
  const db = new Database(file, { readonly: true });
  const names = db
    .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")
    .pluck()
    .all() as string[];
  const rows = names.map((name) => [
    name,
    (db.prepare(`SELECT * FROM "${name}"`).all() as object[]).map((row) => ({ ...row, last_change: '' })),
  ]);
  db.close();
  return rows;
}
