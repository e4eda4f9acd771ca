import { readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { Defect, ok } from '../../../../core/result.ts';
import { diskProblem, withTrouble } from '../../../../electron/host/yardFile/sqliteTrouble.ts';

const PATH = '/yards/garden.gpkg';

test.each([
  ['SQLITE_FULL', 'file/disk-full'],
  ['SQLITE_BUSY', 'file/locked'],
  ['SQLITE_BUSY_SNAPSHOT', 'file/locked'],
  ['SQLITE_READONLY', 'file/read-only'],
  ['SQLITE_READONLY_DIRECTORY', 'file/read-only'],
  ['SQLITE_READONLY_DBMOVED', 'file/not-found'],
  ['SQLITE_CORRUPT_VTAB', 'file/damaged'],
  ['SQLITE_CONSTRAINT_UNIQUE', 'file/damaged'],
  ['SQLITE_NOTADB', 'file/not-a-yard'],
  ['SQLITE_IOERR_READ', 'file/unreadable'],
  ['SQLITE_CANTOPEN', 'file/unreadable'],
])('SQLite’s %s is told as %s', (code, kind) => {
  expect(diskProblem(PATH, new Database.SqliteError('said SQLite', code))).toMatchObject({
    kind,
    where: { fileName: 'garden.gpkg' },
  });
});

test.each([
  ['ENOSPC', 'file/disk-full'],
  ['EROFS', 'file/read-only'],
  ['EACCES', 'file/read-only'],
  ['ENOENT', 'file/not-found'],
  ['EEXIST', 'file/exists'],
  ['EIO', 'file/unreadable'],
])('the disk’s %s is told as %s', (code, kind) => {
  expect(diskProblem(PATH, Object.assign(new Error('said the disk'), { code }))?.kind).toBe(kind);
});

test('what is ours to mend is not passed off as trouble with the file', () => {
  const mistakes = [new TypeError('x is not a function'), new Defect('broken'), 'text', null];
  for (const mistake of [
    ...mistakes,
    Object.assign(new Error('bad call'), { code: 'ERR_INVALID_ARG_TYPE' }),
  ]) {
    expect(diskProblem(PATH, mistake)).toBeNull();
    expect(() =>
      withTrouble(PATH, () => {
        throw mistake;
      }),
    ).toThrow();
  }
});

test('work that goes well, and a real error of the disk, come back as results', () => {
  expect(withTrouble(PATH, () => ok(7))).toStrictEqual({ ok: true, value: 7 });
  const missing = withTrouble('/no/such/garden.gpkg', () => ok(readFileSync('/no/such/garden.gpkg')));
  expect(missing).toMatchObject({ ok: false, problems: [{ kind: 'file/not-found' }] });
});
