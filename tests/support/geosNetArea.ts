import initGeosJs from 'geos-wasm';
import type { Ring, YardPoint } from '../../core/spaces.ts';

/**
 * Net areas by GEOS 3.13 (geos-wasm 3.1.1): a different overlay in floating point, no grid. A ring that crosses
 * itself is made valid by its linework, which is even-odd, as in our kernel.
 */
export interface GeosNetArea {
  /** Area of a zone less all of its beds; NaN when GEOS itself gave up. */
  netAreaM2(zone: Ring, beds: readonly Ring[]): number;
  /** Area of a zone less all ground within a width of lines, and less whatever else is taken. */
  treatedAreaM2(zone: Ring, taken: readonly GeosTaken[]): number;
  /** Area of a ring grown (or shrunk, below 0) with round corners of 64 chords a quarter. */
  grownAreaM2(ring: Ring, byM: number): number;
}

/** A ring's ground, or an open line, grown by a width with round corners and ends of 64 chords a quarter. */
export interface GeosTaken {
  readonly ring?: Ring;
  readonly line?: readonly YardPoint[];
  readonly widthM: number;
}

export async function startGeos(): Promise<GeosNetArea> {
  const geos = await initGeosJs();
  const reader = geos.GEOSWKTReader_create();
  const read = (wkt: string): number => {
    const size = wkt.length + 1;
    const text = geos.Module._malloc(size);
    geos.Module.stringToUTF8(wkt, text, size);
    const shape = geos.GEOSWKTReader_read(reader, text);
    geos.Module._free(text);
    const valid = geos.GEOSMakeValid(shape);
    geos.GEOSGeom_destroy(shape);
    return valid;
  };
  const areaOf = (shape: number): number => {
    const place = geos.Module._malloc(8);
    const done = geos.GEOSArea(shape, place);
    const areaM2 = geos.Module.getValue(place, 'double');
    geos.Module._free(place);
    return done === 1 ? areaM2 : Number.NaN;
  };
  /** One after another, so that no union of our making stands between the two kernels. */
  const lessOneByOne = (zone: Ring, cuts: readonly number[]): number => {
    let left = read(polygonText(zone));
    for (const cut of cuts) {
      const next = left === 0 ? 0 : geos.GEOSDifference(left, cut);
      if (left !== 0) geos.GEOSGeom_destroy(left);
      geos.GEOSGeom_destroy(cut);
      left = next;
    }
    if (left === 0) return Number.NaN;
    const areaM2 = areaOf(left);
    geos.GEOSGeom_destroy(left);
    return areaM2;
  };
  return {
    netAreaM2(zone, beds) {
      return lessOneByOne(
        zone,
        beds.map((bed) => read(polygonText(bed))),
      );
    },
    treatedAreaM2(zone, taken) {
      const grown = taken.map(({ ring, line = [], widthM }) => {
        const shape = read(ring === undefined ? lineText(line) : polygonText(ring));
        if (widthM === 0) return shape;
        const wide = geos.GEOSBuffer(shape, widthM, 64);
        geos.GEOSGeom_destroy(shape);
        return wide;
      });
      return lessOneByOne(zone, grown);
    },
    grownAreaM2(ring, byM) {
      const shape = read(polygonText(ring));
      const grown = geos.GEOSBuffer(shape, byM, 64);
      const areaM2 = areaOf(grown);
      geos.GEOSGeom_destroy(shape);
      geos.GEOSGeom_destroy(grown);
      return areaM2;
    },
  };
}

function lineText(line: readonly YardPoint[]): string {
  return `LINESTRING (${line.map(({ xM, yM }) => `${xM} ${yM}`).join(', ')})`;
}

function polygonText(ring: Ring): string {
  const corners = [...ring, ring[0]].map((corner) => `${corner?.xM} ${corner?.yM}`);
  return `POLYGON ((${corners.join(', ')}))`;
}
