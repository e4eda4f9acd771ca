import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { createYardFile } from '../../../../electron/host/yardFile/index.ts';
import { fullYard, SKETCH } from '../../../support/storedYards.ts';
import { type YardFolder, yardFolder } from '../../../support/yardFolder.ts';
import { kindOf, valueIn } from '../../../support/yardStoreContract.ts';

let place: YardFolder;
beforeEach(() => {
  place = yardFolder();
});
afterEach(() => place.leave());

test('a new yard is one GeoPackage 1.3 file, open for writing', () => {
  const store = valueIn(createYardFile(place.path('garden'), fullYard(), [SKETCH]));
  expect(store.readOnly).toBe(false);
  store.close();
  expect(readdirSync(place.folder)).toStrictEqual(['garden.gpkg']);
  const header = readFileSync(place.path('garden'));
  // OGC 12-128r17, requirement 2: application_id 'GPKG' at byte 68, user_version 10300 at byte 60
  expect(header.toString('latin1', 68, 72)).toBe('GPKG');
  expect(header.readUInt32BE(60)).toBe(10_300);
});

test.each(['a file', 'a folder'])('a yard is never made over %s', (what) => {
  const path = place.path('garden');
  if (what === 'a file') writeFileSync(path, 'mine');
  else mkdirSync(path);
  expect(kindOf(createYardFile(path, fullYard(), []))).toBe('file/exists');
  expect(readdirSync(place.folder)).toStrictEqual(['garden.gpkg']);
  if (what === 'a file') expect(readFileSync(path, 'utf8')).toBe('mine');
});

test('a folder that is not there is not found, and not made', () => {
  expect(kindOf(createYardFile(join(place.folder, 'no', 'garden.gpkg'), fullYard(), []))).toBe(
    'file/not-found',
  );
  expect(readdirSync(place.folder)).toStrictEqual([]);
});

test('a yard that is no yard is refused before anything is written', () => {
  const yard = fullYard();
  const twice = { ...yard, marks: [...yard.marks, ...yard.marks] };
  const nan = { ...yard, products: [{ ...yard.products[0], rateLPerM2: Number.NaN }] };
  for (const wrong of [twice, nan, { ...yard, jobs: undefined }, null]) {
    expect(kindOf(createYardFile(place.path('garden'), wrong as never, []))).toBe('host/bad-request');
  }
  expect(readdirSync(place.folder)).toStrictEqual([]);
});

test('names with spaces, umlauts, quotes and percent signs are names like any other', () => {
  const path = join(place.folder, "Grün & 'Söhne' 100%?#;.gpkg");
  valueIn(createYardFile(path, fullYard(), [])).close();
  expect(readdirSync(place.folder)).toStrictEqual(["Grün & 'Söhne' 100%?#;.gpkg"]);
});
