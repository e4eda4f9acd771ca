import { chmodSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import type { Edit } from '../../../../core/edits/index.ts';
import type { NewImage, YardStore } from '../../../../core/yardFile/index.ts';
import { connect, allowWriting } from '../../../../electron/host/yardFile/connection.ts';
import { GeoPackageYardStore } from '../../../../electron/host/yardFile/GeoPackageYardStore.ts';
import { createYardFile, openYardFile } from '../../../../electron/host/yardFile/index.ts';
import { takeOwnership } from '../../../../electron/host/yardFile/ownership.ts';
import { canMount, type SmallDisk, smallDisk } from '../../../support/smallDisk.ts';
import { fullYard, imageOf, moveCorner, point } from '../../../support/storedYards.ts';
import { kindOf, valueIn } from '../../../support/yardStoreContract.ts';

const NOTHING: Edit = { label: 'a big picture', changes: [] };
const MOUNTS = canMount();
const IS_ROOT = process.getuid?.() === 0;

function bigImage(kilobytes: number, first = 7): NewImage {
  return imageOf(Uint8Array.from({ length: kilobytes * 1024 }, (_, i) => first + i * 31));
}

/** Fills the store until it refuses; then all that was acknowledged must be there, and room made must be usable. */
function expectWholeWhenFull(store: YardStore): void {
  const before = valueIn(store.applyEdit(moveCorner(fullYard(), 'z1', point(1, 1)), []));
  const yard = valueIn(store.readYard());
  let full = store.applyEdit(NOTHING, [bigImage(100, 0)]);
  let sequence = before.sequence;
  for (let n = 1; full.ok && n < 50; n += 1) {
    sequence = full.value.sequence;
    full = store.applyEdit(NOTHING, [bigImage(100, n)]);
  }
  expect(kindOf(full)).toBe('file/disk-full');
  expect(valueIn(store.history()).sequence).toBe(sequence);
  expect(valueIn(store.readYard())).toStrictEqual(yard);
}

test('a file that SQLite may not let grow refuses the edit as a full disk and stays whole', () => {
  const folder = mkdtempSync(join(tmpdir(), 'platpace-'));
  const path = join(folder, 'garden.gpkg');
  valueIn(createYardFile(path, fullYard(), [])).close();
  const db = connect(path, false);
  allowWriting(db);
  db.pragma('max_page_count = 150');
  const store = new GeoPackageYardStore(db, path, takeOwnership(path));
  expectWholeWhenFull(store);
  store.close();
  const again = valueIn(openYardFile(path));
  expect(valueIn(again.applyEdit(NOTHING, [bigImage(100, 99)])).undoLabel).toBe('a big picture');
  again.close();
  rmSync(folder, { recursive: true });
});

/* Root writes through file modes, so a full or read-only disk takes a real one: these need the right to mount. */
describe.skipIf(!MOUNTS)('on a disk of its own', () => {
  let disk: SmallDisk;
  afterEach(() => disk.remove());

  test('a full disk refuses the edit and leaves the yard as it was; freed room can be used', () => {
    disk = smallDisk(900);
    const path = join(disk.folder, 'garden.gpkg');
    const ballast = join(disk.folder, 'ballast');
    writeFileSync(ballast, Buffer.alloc(200 * 1024));
    const store = valueIn(createYardFile(path, fullYard(), []));
    expectWholeWhenFull(store);
    const yard = valueIn(store.readYard());
    store.close();
    rmSync(ballast);
    const again = valueIn(openYardFile(path));
    expect(valueIn(again.readYard())).toStrictEqual(yard);
    valueIn(again.applyEdit(moveCorner(yard, 'z1', point(2, 2)), []));
    again.close();
  });

  test('a new yard, or a copy, that does not fit leaves nothing behind', () => {
    disk = smallDisk(600);
    const path = join(disk.folder, 'garden.gpkg');
    expect(kindOf(createYardFile(path, fullYard(), [bigImage(700)]))).toBe('file/disk-full');
    expect(readdirSync(disk.folder)).toStrictEqual([]);
    const store = valueIn(createYardFile(path, fullYard(), [bigImage(150)]));
    expect(kindOf(store.saveCopy(join(disk.folder, 'copy.gpkg')))).toBe('file/disk-full');
    store.close();
    expect(readdirSync(disk.folder)).toStrictEqual(['garden.gpkg']);
  });

  test('on a read-only disk a yard cannot be opened for writing, but can be looked at', () => {
    disk = smallDisk(2_000);
    const path = join(disk.folder, 'garden.gpkg');
    valueIn(createYardFile(path, fullYard(), [])).close();
    disk.makeReadOnly();
    expect(kindOf(openYardFile(path))).toBe('file/read-only');
    const reader = valueIn(openYardFile(path, { readOnly: true }));
    expect(valueIn(reader.readYard())).toStrictEqual(fullYard());
    expect(kindOf(reader.saveCopy(join(disk.folder, 'copy.gpkg')))).toBe('file/read-only');
    reader.close();
    expect(kindOf(createYardFile(join(disk.folder, 'new.gpkg'), fullYard(), []))).toBe('file/read-only');
  });

  test('a write-protected file in a folder that is not cannot be opened for writing either', () => {
    disk = smallDisk(2_000);
    const path = join(disk.folder, 'garden.gpkg');
    valueIn(createYardFile(path, fullYard(), [])).close();
    disk.makeFileReadOnly(path);
    expect(kindOf(openYardFile(path))).toBe('file/read-only');
    expect(readdirSync(disk.folder)).toStrictEqual(['garden.gpkg']);
    valueIn(openYardFile(path, { readOnly: true })).close();
  });
});

describe.skipIf(IS_ROOT)('without write permission for the file or its folder', () => {
  test('a yard cannot be opened for writing, but can be looked at', () => {
    const folder = mkdtempSync(join(tmpdir(), 'platpace-'));
    const path = join(folder, 'garden.gpkg');
    valueIn(createYardFile(path, fullYard(), [])).close();
    chmodSync(path, 0o444);
    expect(kindOf(openYardFile(path))).toBe('file/read-only');
    chmodSync(path, 0o644);
    chmodSync(folder, 0o555);
    try {
      expect(kindOf(openYardFile(path))).toBe('file/read-only');
      valueIn(openYardFile(path, { readOnly: true })).close();
    } finally {
      chmodSync(folder, 0o755);
      rmSync(folder, { recursive: true });
    }
  });
});
