import proj4 from 'proj4';
import proj4list from 'proj4-list';
import { ok, type Result, trouble } from '../result.ts';
import type { LonLat } from '../spaces.ts';

/** Coordinates of some reference system, in its own units, to and from WGS84 degrees. */
export interface Projector {
  /** The system's own coordinates are longitude and latitude in degrees. */
  readonly isDegrees: boolean;
  readonly toLonLat: (x: number, y: number) => LonLat;
  readonly fromLonLat: (at: LonLat) => readonly [x: number, y: number];
}

/**
 * The reference system a file names: 'EPSG:26913', well-known text, or a PROJ text. Units are those of the
 * system itself; survey and international feet stay apart.
 *
 * @param fileName goes into the problem's `where`
 * Problems: file/unknown-crs
 */
export function makeProjector(crs: string, fileName: string): Result<Projector> {
  const name = crs.trim();
  const unknown = trouble({
    kind: 'file/unknown-crs',
    where: { fileName },
    facts: { crs: name.slice(0, 80) },
  });
  const code = /^EPSG:(\d+)$/i.exec(name)?.[1];
  const definition = code === undefined ? name : code === '4326' ? 'WGS84' : proj4list[`EPSG:${code}`]?.[1];
  if (definition === undefined || definition === '') return unknown;
  try {
    const converter = proj4(definition, 'WGS84');
    const toLonLat = (x: number, y: number): LonLat => {
      const [lonDeg, latDeg] = converter.forward([x, y]) as [number, number];
      return { lonDeg, latDeg };
    };
    return ok({
      isDegrees: isDegrees(toLonLat),
      toLonLat,
      fromLonLat: ({ lonDeg, latDeg }) => converter.inverse([lonDeg, latDeg]) as [number, number],
    });
  } catch {
    // The library throws plain errors for text it cannot read; what it was given came from a file.
    return unknown;
  }
}

/** A step of one is a step of a degree, whatever the datum or prime meridian; in metres or feet it is next to nothing. */
function isDegrees(toLonLat: Projector['toLonLat']): boolean {
  const [from, to] = [toLonLat(1, 1), toLonLat(2, 2)];
  return Math.abs(to.lonDeg - from.lonDeg - 1) < 0.01 && Math.abs(to.latDeg - from.latDeg - 1) < 0.01;
}
