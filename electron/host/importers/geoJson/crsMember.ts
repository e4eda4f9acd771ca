import { makeProjector } from '../../../../core/crs/index.ts';
import type { ToLonLat } from './readPositions.ts';

/** How to read the file's coordinates, or the name of a system that is not known. */
export type FoundCrs = { readonly toLonLat: ToLonLat; readonly name: string } | { readonly unknown: string };

/**
 * RFC 7946 knows WGS84 longitude and latitude only; the `crs` member of the 2008 specification it replaced
 * still comes out of many programs and is honoured when it names an EPSG code.
 */
export function crsOf(root: Readonly<Record<string, unknown>>, fileName: string): FoundCrs {
  const asLonLat: FoundCrs = { toLonLat: (x, y) => ({ lonDeg: x, latDeg: y }), name: 'WGS84' };
  if (root.crs === undefined || root.crs === null) return asLonLat;
  const properties = (root.crs as { readonly properties?: unknown }).properties;
  const name = (properties as { readonly name?: unknown } | null | undefined)?.name;
  if (typeof name !== 'string') return { unknown: 'its crs member names none' };
  // Order is x, y (longitude, latitude) in either specification, whatever the code's own axis order.
  if (/CRS:?84$/i.test(name) || /(^|[^0-9])4326$/.test(name)) return asLonLat;
  const code = /^(?:urn:(?:ogc|x-ogc):def:crs:)?EPSG:(?:[\d.]*:)?(\d+)$/i.exec(name)?.[1];
  const projector = makeProjector(code === undefined ? name : `EPSG:${code}`, fileName);
  if (!projector.ok) return { unknown: name.slice(0, 80) };
  const { toLonLat } = projector.value;
  return { toLonLat: (x, y) => toLonLat(x, y), name: code === undefined ? name : `EPSG:${code}` };
}
