import { resolve } from 'node:path';
import Database from 'better-sqlite3';
import { ok, type Result } from '../../../core/result.ts';
import type { Yard } from '../../../core/yard.ts';
import { checkYard, MIGRATIONS, type NewImage, type YardStore } from '../../../core/yardFile/index.ts';
import { GPKG_APPLICATION_ID, GPKG_VERSION } from './checkFile.ts';
import { allowWriting, inTransaction } from './connection.ts';
import { putInPlace } from './copyWhole.ts';
import { badRequest, checkImages, writeNewYard } from './GeoPackageYardStore.ts';
import { openYardFile } from './openYardFile.ts';
import { withTrouble } from './sqliteTrouble.ts';

/**
 * Makes a yard file and opens it for writing. Never overwrites. The file is written under a temporary name
 * beside its own and gets its name when it is whole, so that nothing half written is ever found or left.
 *
 * Problems: file/exists, file/disk-full, file/read-only, file/not-found (no such folder), host/bad-request
 */
export function createYardFile(
  givenPath: string,
  yard: Yard,
  images: readonly NewImage[],
): Result<YardStore> {
  const wrong = checkYard(yard) ?? checkImages(images);
  if (wrong !== null) return badRequest(wrong);
  const path = resolve(givenPath);
  const made = withTrouble(path, () => {
    putInPlace(path, (temporary) => writeFile(temporary, yard, images));
    return ok(null);
  });
  return made.ok ? openYardFile(path) : made;
}

function writeFile(path: string, yard: Yard, images: readonly NewImage[]): void {
  const db = new Database(path);
  try {
    db.pragma(`application_id = ${GPKG_APPLICATION_ID}`);
    db.pragma(`user_version = ${GPKG_VERSION}`);
    db.pragma('foreign_keys = OFF');
    allowWriting(db);
    inTransaction(db, 'write', () => {
      for (const { sql } of MIGRATIONS) db.exec(sql);
      writeNewYard(db, path, yard, images);
    });
  } finally {
    db.close();
  }
}
