import type { Migration } from './migration.ts';

/*
 * Source: OGC 12-128r17 (GeoPackage 1.3): the gpkg_ tables are annex C, the spatial index and its triggers
 * annex F.3. `fid` is the integer key the standard asks for; `id` is the document's own.
 * A feature whose `revision_to` is null is on the ground today.
 */

const STANDARD_TABLES = `
CREATE TABLE gpkg_spatial_ref_sys (
  srs_name TEXT NOT NULL,
  srs_id INTEGER PRIMARY KEY,
  organization TEXT NOT NULL,
  organization_coordsys_id INTEGER NOT NULL,
  definition TEXT NOT NULL,
  description TEXT
);
INSERT INTO gpkg_spatial_ref_sys VALUES
  ('Undefined Cartesian SRS', -1, 'NONE', -1, 'undefined', 'undefined Cartesian coordinate reference system'),
  ('Undefined geographic SRS', 0, 'NONE', 0, 'undefined', 'undefined geographic coordinate reference system'),
  ('WGS 84 geodetic', 4326, 'EPSG', 4326,
   'GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563,AUTHORITY["EPSG","7030"]],AUTHORITY["EPSG","6326"]],PRIMEM["Greenwich",0,AUTHORITY["EPSG","8901"]],UNIT["degree",0.0174532925199433,AUTHORITY["EPSG","9122"]],AXIS["Latitude",NORTH],AXIS["Longitude",EAST],AUTHORITY["EPSG","4326"]]',
   'longitude/latitude coordinates in decimal degrees on the WGS 84 spheroid');
CREATE TABLE gpkg_contents (
  table_name TEXT NOT NULL PRIMARY KEY,
  data_type TEXT NOT NULL,
  identifier TEXT UNIQUE,
  description TEXT DEFAULT '',
  last_change DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')),
  min_x DOUBLE,
  min_y DOUBLE,
  max_x DOUBLE,
  max_y DOUBLE,
  srs_id INTEGER,
  CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id)
);
CREATE TABLE gpkg_geometry_columns (
  table_name TEXT NOT NULL,
  column_name TEXT NOT NULL,
  geometry_type_name TEXT NOT NULL,
  srs_id INTEGER NOT NULL,
  z TINYINT NOT NULL,
  m TINYINT NOT NULL,
  CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name),
  CONSTRAINT uk_gc_table_name UNIQUE (table_name),
  CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),
  CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id)
);
CREATE TABLE gpkg_extensions (
  table_name TEXT,
  column_name TEXT,
  extension_name TEXT NOT NULL,
  definition TEXT NOT NULL,
  scope TEXT NOT NULL,
  CONSTRAINT ge_tce UNIQUE (table_name, column_name, extension_name)
);`;

const FID = 'fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL';

/** The geometry stands last: columns behind a long outline would be slow to reach. */
function featureTable(table: string, geometry: string, ownColumns: readonly string[], about: string): string {
  const columns = [
    FID,
    'id TEXT NOT NULL',
    'name TEXT NOT NULL',
    ...ownColumns,
    'sort_order INTEGER NOT NULL',
    'revision_from INTEGER NOT NULL DEFAULT 1',
    'revision_to INTEGER',
    `geom ${geometry} NOT NULL`,
  ];
  return `
CREATE TABLE ${table} (\n  ${columns.join(',\n  ')}\n);
CREATE UNIQUE INDEX ${table}_id ON ${table} (id) WHERE revision_to IS NULL;
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('${table}', 'features', '${table}', '${about}', -1);
INSERT INTO gpkg_geometry_columns VALUES ('${table}', 'geom', '${geometry}', -1, 0, 0);
INSERT INTO gpkg_extensions VALUES
  ('${table}', 'geom', 'gpkg_rtree_index', 'http://www.geopackage.org/spec130/#extension_rtree', 'write-only');
CREATE VIRTUAL TABLE rtree_${table}_geom USING rtree(id, minx, maxx, miny, maxy);${indexTriggers(table)}`;
}

/** Annex F.3's triggers, which keep the spatial index in step whoever writes the table. */
function indexTriggers(table: string): string {
  const index = `rtree_${table}_geom`;
  const there = '(NEW.geom NOTNULL AND NOT ST_IsEmpty(NEW.geom))';
  const gone = '(NEW.geom ISNULL OR ST_IsEmpty(NEW.geom))';
  const put = `INSERT OR REPLACE INTO ${index} VALUES (
    NEW.fid, ST_MinX(NEW.geom), ST_MaxX(NEW.geom), ST_MinY(NEW.geom), ST_MaxY(NEW.geom)
  );`;
  const drop = `DELETE FROM ${index} WHERE id = OLD.fid;`;
  const trigger = (name: string, when: string, ...steps: string[]) =>
    `\nCREATE TRIGGER ${index}_${name} ${when}\nBEGIN\n  ${steps.join('\n  ')}\nEND;`;
  return [
    trigger('insert', `AFTER INSERT ON ${table}\n  WHEN ${there}`, put),
    trigger('update1', `AFTER UPDATE OF geom ON ${table}\n  WHEN OLD.fid = NEW.fid AND ${there}`, put),
    trigger('update2', `AFTER UPDATE OF geom ON ${table}\n  WHEN OLD.fid = NEW.fid AND ${gone}`, drop),
    trigger('update3', `AFTER UPDATE ON ${table}\n  WHEN OLD.fid != NEW.fid AND ${there}`, drop, put),
    trigger(
      'update4',
      `AFTER UPDATE ON ${table}\n  WHEN OLD.fid != NEW.fid AND ${gone}`,
      `DELETE FROM ${index} WHERE id IN (OLD.fid, NEW.fid);`,
    ),
    trigger('delete', `AFTER DELETE ON ${table}\n  WHEN OLD.geom NOT NULL`, drop),
  ].join('');
}

function attributeTable(table: string, columns: readonly string[], about: string): string {
  return `
CREATE TABLE ${table} (\n  ${[FID, ...columns].join(',\n  ')}\n);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description)
  VALUES ('${table}', 'attributes', '${table}', '${about}');`;
}

/** A list the person keeps, in an order of theirs. */
function listTable(table: string, columns: readonly string[], about: string): string {
  const all = ['id TEXT NOT NULL UNIQUE', 'name TEXT NOT NULL', ...columns, 'sort_order INTEGER NOT NULL'];
  return attributeTable(table, all, about);
}

const AREAS = ['gross_area_m2 DOUBLE', 'turf_area_m2 DOUBLE', 'treated_area_m2 DOUBLE'];
const KIND = ['kind TEXT NOT NULL'];
/**
 * How an outline was traced and placed; `traced` is JSON, and NULL where the geometry says it all. The defaults are for
 * outlines that are drawn in another program.
 */
const OUTLINE = [
  'traced TEXT',
  "placed_by TEXT NOT NULL DEFAULT 'hand'",
  'picture_id TEXT',
  'corner_sigma_m DOUBLE',
  'keep_off_m DOUBLE',
  'slope TEXT',
  'claims_overlaps BOOLEAN NOT NULL DEFAULT 0',
  'blocks_hose BOOLEAN',
];

export const V001_FIRST_TABLES: Migration = {
  version: 1,
  sql: [
    STANDARD_TABLES,
    featureTable('zones', 'POLYGON', [...OUTLINE, ...AREAS], 'Lawn that is treated as one piece'),
    featureTable(
      'cut_outs',
      'POLYGON',
      [...KIND, ...OUTLINE],
      'What is never treated: bed, hardscape, building, water, tree',
    ),
    featureTable('keep_offs', 'POLYGON', OUTLINE, 'Strips that are kept clear'),
    featureTable('check_plots', 'POLYGON', OUTLINE, 'Patches left untreated to compare against'),
    featureTable('marks', 'POINT', KIND, 'Spigots and landmarks'),
    attributeTable(
      'yard_details',
      [
        'name TEXT NOT NULL',
        'ground_date DATE NOT NULL',
        'unit_system TEXT NOT NULL',
        'frame_kind TEXT NOT NULL',
        'origin_lon_deg DOUBLE',
        'origin_lat_deg DOUBLE',
        'corner_sigma_m DOUBLE',
        'overlap_rule TEXT NOT NULL',
        'amounts_by TEXT NOT NULL',
      ],
      'The yard itself, one row',
    ),
    listTable(
      'pictures',
      [
        'image_hash TEXT NOT NULL',
        'media_type TEXT NOT NULL',
        'width_px INTEGER NOT NULL',
        'height_px INTEGER NOT NULL',
        'placement TEXT NOT NULL',
        'attribution TEXT NOT NULL',
        'corner_sigma_m DOUBLE',
        'scale_sigma DOUBLE',
      ],
      'Base pictures and how they lie in the yard (placement is JSON)',
    ),
    attributeTable(
      'images',
      ['image_hash TEXT NOT NULL UNIQUE', 'media_type TEXT NOT NULL', 'bytes BLOB NOT NULL'],
      'Bytes of the base pictures, by SHA-256',
    ),
    listTable(
      'elevations',
      [
        'grid_columns INTEGER NOT NULL',
        'grid_rows INTEGER NOT NULL',
        'corners TEXT NOT NULL',
        'heights_mm TEXT NOT NULL',
      ],
      'Heights of the ground on a grid (corners and heights_mm are JSON)',
    ),
    listTable(
      'field_checks',
      [
        'from_x_m DOUBLE NOT NULL',
        'from_y_m DOUBLE NOT NULL',
        'to_x_m DOUBLE NOT NULL',
        'to_y_m DOUBLE NOT NULL',
        'taped_m DOUBLE NOT NULL',
      ],
      'Distances taped on the ground to hold the map against',
    ),
    listTable(
      'products',
      [
        'product_use TEXT NOT NULL',
        'rate_l_per_m2 DOUBLE NOT NULL',
        'most_rate_l_per_m2 DOUBLE',
        'least_carrier_l_per_m2 DOUBLE',
      ],
      'What the labels say',
    ),
    listTable(
      'applicators',
      [
        'kind TEXT NOT NULL',
        'capacity_l DOUBLE NOT NULL',
        'carrier_l_per_m2 DOUBLE NOT NULL',
        'swath_m DOUBLE NOT NULL',
        'pace_m_per_s DOUBLE NOT NULL',
        'step_m DOUBLE NOT NULL',
      ],
      'Applicators and their calibration',
    ),
    listTable(
      'jobs',
      [
        'zone_ids TEXT',
        'product_id TEXT NOT NULL',
        'applicator_id TEXT NOT NULL',
        'policy TEXT NOT NULL',
        'heading TEXT NOT NULL',
        'rounds INTEGER NOT NULL',
        'held_cuts TEXT NOT NULL',
        'start_x_m DOUBLE',
        'start_y_m DOUBLE',
        'finish_x_m DOUBLE',
        'finish_y_m DOUBLE',
        'hose TEXT',
      ],
      'Zones to be treated (zone_ids, heading, held_cuts and hose are JSON; zone_ids null = every zone)',
    ),
    attributeTable(
      'edits',
      [
        'sequence INTEGER NOT NULL UNIQUE',
        'label TEXT NOT NULL',
        'state TEXT NOT NULL',
        'changes TEXT NOT NULL',
      ],
      'Every edit, for undo and redo: its rows before and after as JSON; state is done or undone',
    ),
    attributeTable(
      'yard_version',
      ['schema_version INTEGER NOT NULL', 'edit_sequence INTEGER NOT NULL'],
      'Version of these tables, and a count that grows with every edit, undo and redo',
    ),
    '\nCREATE INDEX edits_state ON edits (state, sequence);',
    '\nINSERT INTO yard_version (schema_version, edit_sequence) VALUES (1, 0);',
  ].join('\n'),
};
