import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { MIGRATIONS, type Migration } from '../../../../core/yardFile/index.ts';
import { createYardFile, openYardFile } from '../../../../electron/host/yardFile/index.ts';
import { safetyCopyPath } from '../../../../electron/host/yardFile/migrate.ts';
import { fullYard, moveCorner, point, SKETCH } from '../../../support/storedYards.ts';
import { type YardFolder, yardFolder } from '../../../support/yardFolder.ts';
import { kindOf, valueIn } from '../../../support/yardStoreContract.ts';

/* No second version has been released; these steps stand in for the ones to come. */
const next = MIGRATIONS.length + 1;
const WITH_SOIL: readonly Migration[] = [
  ...MIGRATIONS,
  {
    version: next,
    sql: 'ALTER TABLE zones ADD COLUMN soil TEXT; CREATE TABLE seen (fid INTEGER PRIMARY KEY)',
  },
];
const FAILING: readonly Migration[] = [
  ...WITH_SOIL,
  {
    version: next + 1,
    sql: 'ALTER TABLE zones ADD COLUMN slope DOUBLE; ALTER TABLE no_such_table ADD COLUMN x',
  },
];

let place: YardFolder;
let path: string;
beforeEach(() => {
  place = yardFolder();
  path = place.path('garden');
  valueIn(createYardFile(path, fullYard(), [SKETCH])).close();
});
afterEach(() => place.leave());

test('an older yard is brought up to date, works on, and its old self is kept beside it', () => {
  const store = valueIn(openYardFile(path, { migrations: WITH_SOIL }));
  expect(valueIn(store.readYard())).toStrictEqual(fullYard());
  valueIn(store.applyEdit(moveCorner(fullYard(), 'z1', point(1, 1)), []));
  store.close();
  const db = new Database(path, { readonly: true });
  expect(db.prepare('SELECT schema_version FROM yard_version').pluck().get()).toBe(next);
  expect(db.prepare("SELECT soil FROM zones WHERE id = 'z1'").pluck().get()).toBeNull();
  db.close();
  // To this program, which knows no such step, the new file is too new and the copy is as good as ever.
  expect(kindOf(openYardFile(path))).toBe('file/newer-version');
  const old = valueIn(openYardFile(safetyCopyPath(path, MIGRATIONS.length)));
  expect(valueIn(old.readYard())).toStrictEqual(fullYard());
  old.close();
});

test('a step that fails leaves the file as it was', () => {
  const before = readFileSync(path);
  expect(kindOf(openYardFile(path, { migrations: FAILING }))).toBe('file/damaged');
  expect(readFileSync(path).equals(before)).toBe(true);
  valueIn(openYardFile(path)).close();
});

test('without room for the safety copy under its name nothing is touched', () => {
  writeFileSync(safetyCopyPath(path, MIGRATIONS.length), 'something of the owner’s');
  const before = readFileSync(path);
  expect(kindOf(openYardFile(path, { migrations: WITH_SOIL }))).toBe('file/exists');
  expect(readFileSync(path).equals(before)).toBe(true);
  expect(readFileSync(safetyCopyPath(path, MIGRATIONS.length), 'utf8')).toBe('something of the owner’s');
});

test('an older yard is not brought up to date by someone who only looks', () => {
  expect(kindOf(openYardFile(path, { migrations: WITH_SOIL, readOnly: true }))).toBe('file/read-only');
  expect(existsSync(safetyCopyPath(path, MIGRATIONS.length))).toBe(false);
});

test.each([
  ['/yards/garden.gpkg', '/yards/garden.version-3.gpkg'],
  ['/yards/garden.GPKG', '/yards/garden.version-3.gpkg'],
  ['/yards/garden', '/yards/garden.version-3.gpkg'],
  ['/yards.gpkg/garden.old.gpkg', '/yards.gpkg/garden.old.version-3.gpkg'],
])('the safety copy of %s is %s', (given, copy) => {
  expect(safetyCopyPath(given, 3)).toBe(copy);
});
