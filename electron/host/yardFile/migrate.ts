import type Database from 'better-sqlite3';
import type { Migration } from '../../../core/yardFile/index.ts';
import { inTransaction } from './connection.ts';
import { copyWhole } from './copyWhole.ts';

/** Takes an open yard file of an older version to the newest: a safety copy first, then all steps or none. */
export function migrate(
  db: Database.Database,
  path: string,
  from: number,
  migrations: readonly Migration[],
): void {
  copyWhole(db, safetyCopyPath(path, from));
  inTransaction(db, 'write', () => {
    for (const { version, sql } of migrations) {
      if (version <= from) continue;
      db.exec(sql);
      db.prepare('UPDATE yard_version SET schema_version = ?').run(version);
    }
  });
}

/** `garden.gpkg` of version 1 is kept as `garden.version-1.gpkg`. */
export function safetyCopyPath(path: string, version: number): string {
  return path.replace(/(\.gpkg)?$/i, `.version-${version}.gpkg`);
}
