import type { YardFrame } from '../yard.ts';

/** The standard's "undefined Cartesian" system, for a yard that is nowhere on earth. */
export const LOOSE_SRS_ID = -1;
/** Ours: above 32,767, where EPSG's own numbers end. One yard file holds one yard, so one number is enough. */
export const PLACED_SRS_ID = 100_000;

/** A row of `gpkg_spatial_ref_sys`. */
export interface SpatialFrame {
  readonly srs_name: string;
  readonly srs_id: number;
  readonly organization: string;
  readonly organization_coordsys_id: number;
  readonly definition: string;
  readonly description: string;
}

export function srsIdOf(frame: YardFrame): number {
  return frame.kind === 'placed' ? PLACED_SRS_ID : LOOSE_SRS_ID;
}

/**
 * A placed yard's frame as other programs understand it; null for a loose yard, whose system the standard has.
 * Source: OGC 01-009 (WKT 1), clause 7; transverse Mercator is EPSG method 9807; WGS 84 axis and flattening
 * are those of EPSG ellipsoid 7030.
 */
export function spatialFrameOf(frame: YardFrame): SpatialFrame | null {
  if (frame.kind === 'loose') return null;
  const { lonDeg, latDeg } = frame.origin;
  return {
    srs_name: 'Yard frame',
    srs_id: PLACED_SRS_ID,
    organization: 'NONE',
    organization_coordsys_id: PLACED_SRS_ID,
    definition:
      'PROJCS["Yard frame",' +
      'GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563]],' +
      'PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433]],' +
      'PROJECTION["Transverse_Mercator"],' +
      `PARAMETER["latitude_of_origin",${plain(latDeg)}],PARAMETER["central_meridian",${plain(lonDeg)}],` +
      'PARAMETER["scale_factor",1],PARAMETER["false_easting",0],PARAMETER["false_northing",0],' +
      'UNIT["metre",1],AXIS["Easting",EAST],AXIS["Northing",NORTH]]',
    description: 'Transverse Mercator on WGS 84, true to scale at an origin in the middle of the yard',
  };
}

/** A number without an exponent, which some readers of WKT stumble over. */
function plain(value: number): string {
  const shortest = String(value);
  return shortest.includes('e') ? value.toFixed(20) : shortest;
}
