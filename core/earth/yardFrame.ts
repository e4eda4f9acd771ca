import proj4, { type Converter } from 'proj4';
import type { LonLat, YardPoint } from '../spaces.ts';

/**
 * The PROJ text of the yard frame: transverse Mercator on WGS84, scale 1 at the origin, no false origin.
 *
 * Accuracy: areas to 2e-9 within 3 km of the origin; checked in tests/oracle/geodesicArea.test.ts
 * Source: EPSG method 9807 (transverse Mercator)
 */
export function yardFrameText(origin: LonLat): string {
  return `+proj=tmerc +lat_0=${origin.latDeg} +lon_0=${origin.lonDeg} +k=1 +x_0=0 +y_0=0 +datum=WGS84 +units=m +no_defs`;
}

/** A place on earth in the frame of a yard placed at `origin`. */
export function lonLatToYard(origin: LonLat, at: LonLat): YardPoint {
  const [xM, yM] = converter(origin).forward([at.lonDeg, at.latDeg]) as [number, number];
  return { xM, yM };
}

/** The place on earth of a point of a yard placed at `origin`. */
export function yardToLonLat(origin: LonLat, point: YardPoint): LonLat {
  const [lonDeg, latDeg] = converter(origin).inverse([point.xM, point.yM]) as [number, number];
  return { lonDeg, latDeg };
}

/** Setting up a projection costs far more than using it; a yard's points come by the thousand. */
const converters = new Map<string, Converter>();
/** More yards than anyone has open at once; keeps the table from growing without end. */
const MOST_CONVERTERS = 16;

function converter(origin: LonLat): Converter {
  const text = yardFrameText(origin);
  const known = converters.get(text);
  if (known) return known;
  if (converters.size >= MOST_CONVERTERS) converters.clear();
  const made = proj4('WGS84', text);
  converters.set(text, made);
  return made;
}
