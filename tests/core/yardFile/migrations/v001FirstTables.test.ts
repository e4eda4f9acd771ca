import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS, ROW_TABLES } from '../../../../core/yardFile/index.ts';

/** The whole schema as SQLite has it after all steps, in a form to read. */
function schemaText(): string {
  const db = new Database(':memory:');
  for (const { sql } of MIGRATIONS) db.exec(sql);
  const statements = db
    .prepare(
      `SELECT sql FROM sqlite_schema
       WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'
         AND (name NOT LIKE 'rtree\\_%' ESCAPE '\\' OR sql LIKE 'CREATE VIRTUAL%' OR type = 'trigger')`,
    )
    .pluck()
    .all() as string[];
  const list = (table: string, columns: string) =>
    (db.prepare(`SELECT ${columns} FROM ${table}`).raw().all() as unknown[][]).map(
      (row) => `-- ${row.join(' | ')}`,
    );
  const contents = [
    '-- gpkg_spatial_ref_sys',
    ...list('gpkg_spatial_ref_sys', 'srs_name, srs_id, organization, organization_coordsys_id'),
    '-- gpkg_contents',
    ...list('gpkg_contents', 'table_name, data_type, identifier, description, srs_id'),
    '-- gpkg_geometry_columns',
    ...list('gpkg_geometry_columns', '*'),
    '-- gpkg_extensions',
    ...list('gpkg_extensions', '*'),
    '-- yard_version',
    ...list('yard_version', 'schema_version, edit_sequence'),
  ];
  db.close();
  return `${statements.map((sql) => `${sql};`).join('\n\n')}\n\n${contents.join('\n')}\n`;
}

test('the schema is the one written down; a change to it is a new migration and a new text', async () => {
  await expect(schemaText()).toMatchFileSnapshot('../../../fixtures/yardFileSchema.sql');
});

test('every column this program reads and writes is in the schema', () => {
  const db = new Database(':memory:');
  for (const { sql } of MIGRATIONS) db.exec(sql);
  for (const { name, columns } of ROW_TABLES) {
    const made = (db.pragma(`table_info(${name})`) as { name: string }[]).map((column) => column.name);
    expect(made).toEqual(expect.arrayContaining([...columns]));
  }
  db.close();
});
