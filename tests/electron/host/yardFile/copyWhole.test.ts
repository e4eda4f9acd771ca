import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { copyWhole, putInPlace } from '../../../../electron/host/yardFile/copyWhole.ts';

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'platpace-'));
  path = join(folder, 'garden.gpkg');
});
afterEach(() => rmSync(folder, { recursive: true }));

test('a file gets its name only when it is made', () => {
  putInPlace(path, (temporary) => {
    expect(readdirSync(folder)).not.toContain('garden.gpkg');
    writeFileSync(temporary, 'whole');
  });
  expect(readdirSync(folder)).toStrictEqual(['garden.gpkg']);
  expect(readFileSync(path, 'utf8')).toBe('whole');
});

test('when the making fails nothing is left', () => {
  const fail = (temporary: string) => {
    writeFileSync(temporary, 'half');
    writeFileSync(`${temporary}-journal`, 'half');
    throw new Error('power cut');
  };
  expect(() => putInPlace(path, fail)).toThrow('power cut');
  expect(readdirSync(folder)).toStrictEqual([]);
});

test('a name that is taken while the file is being made is not overwritten', () => {
  const overtaken = (temporary: string) => {
    writeFileSync(temporary, 'ours');
    writeFileSync(path, 'theirs');
  };
  expect(() => putInPlace(path, overtaken)).toThrow(expect.objectContaining({ code: 'EEXIST' }));
  expect(readFileSync(path, 'utf8')).toBe('theirs');
  expect(readdirSync(folder)).toStrictEqual(['garden.gpkg']);
});

test('a copy holds the same rows, application_id and version', () => {
  const db = new Database(':memory:');
  db.pragma('application_id = 0x47504b47');
  db.pragma('user_version = 10300');
  db.exec('CREATE TABLE t (x); INSERT INTO t VALUES (1), (2)');
  copyWhole(db, path);
  db.close();
  const copy = new Database(path, { readonly: true });
  expect(copy.prepare('SELECT x FROM t').pluck().all()).toStrictEqual([1, 2]);
  expect(copy.pragma('application_id', { simple: true })).toBe(0x47504b47);
  expect(copy.pragma('user_version', { simple: true })).toBe(10_300);
  copy.close();
});
