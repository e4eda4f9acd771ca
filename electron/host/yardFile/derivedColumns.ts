import type Database from 'better-sqlite3';
import { type Ground, type ResolvedZone, resolveZones } from '../../../core/zones/index.ts';
import { FEATURE_TABLES, spatialFrameOf, srsIdOf, withSrsId } from '../../../core/yardFile/index.ts';
import type { YardFrame } from '../../../core/yard.ts';

/**
 * What a GIS user sees and this program never reads back: the areas of the zones, the extent of each layer,
 * the yard's own frame. All are written in the transaction of the edit they follow from.
 */

/** Areas of every zone, or none while the outlines do not make sense (an edge that crosses itself). */
export function writeAreas(db: Database.Database, ground: Ground): void {
  const resolved = resolveZones(ground);
  const areas = new Map<string, ResolvedZone>();
  if (resolved.ok) for (const zone of resolved.value.zones) areas.set(zone.zoneId, zone);
  const rows = db.prepare<[], AreaRow>(
    'SELECT fid, id, gross_area_m2, turf_area_m2, treated_area_m2 FROM zones WHERE revision_to IS NULL',
  );
  const write = db.prepare(
    'UPDATE zones SET gross_area_m2 = ?, turf_area_m2 = ?, treated_area_m2 = ? WHERE fid = ?',
  );
  for (const row of rows.all()) {
    const zone = areas.get(row.id);
    const next = [zone?.grossAreaM2 ?? null, zone?.turfAreaM2 ?? null, zone?.treatedAreaM2 ?? null];
    const stored = [row.gross_area_m2, row.turf_area_m2, row.treated_area_m2];
    if (next.some((area, i) => area !== stored[i])) write.run(...next, row.fid);
  }
}

interface AreaRow {
  readonly fid: number;
  readonly id: string;
  readonly gross_area_m2: number | null;
  readonly turf_area_m2: number | null;
  readonly treated_area_m2: number | null;
}

/** The extent of each layer named, and the time it was last changed. */
export function writeContents(db: Database.Database, tables: Iterable<string>): void {
  const features = new Set(FEATURE_TABLES.map((table) => table.name));
  for (const table of tables) {
    const extent = features.has(table)
      ? `(min_x, min_y, max_x, max_y) = (SELECT min(ST_MinX(geom)), min(ST_MinY(geom)),
           max(ST_MaxX(geom)), max(ST_MaxY(geom)) FROM ${table}), `
      : '';
    db.prepare(
      `UPDATE gpkg_contents SET ${extent}last_change = strftime('%Y-%m-%dT%H:%M:%fZ','now') WHERE table_name = ?`,
    ).run(table);
  }
}

/** The yard's frame as a spatial reference system, and every feature under it. */
export function writeFrame(db: Database.Database, frame: YardFrame): void {
  const spatialFrame = spatialFrameOf(frame);
  const srsId = srsIdOf(frame);
  if (spatialFrame !== null) {
    db.prepare(
      `INSERT OR REPLACE INTO gpkg_spatial_ref_sys
         (srs_name, srs_id, organization, organization_coordsys_id, definition, description)
       VALUES (:srs_name, :srs_id, :organization, :organization_coordsys_id, :definition, :description)`,
    ).run(spatialFrame);
  }
  const names = FEATURE_TABLES.map((table) => table.name);
  for (const name of names) {
    const changed = db
      .prepare('UPDATE gpkg_geometry_columns SET srs_id = ? WHERE table_name = ? AND srs_id <> ?')
      .run(srsId, name, srsId).changes;
    db.prepare('UPDATE gpkg_contents SET srs_id = ? WHERE table_name = ?').run(srsId, name);
    if (changed === 0) continue;
    const rows = db.prepare<[], { fid: number; geom: Buffer }>(`SELECT fid, geom FROM ${name}`).all();
    const write = db.prepare(`UPDATE ${name} SET geom = ? WHERE fid = ?`);
    for (const { fid, geom } of rows) write.run(Buffer.from(withSrsId(geom, srsId)), fid);
  }
}
