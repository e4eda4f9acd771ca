import initGeosJs from 'geos-wasm';
import type { Ring } from '../../core/spaces.ts';

/**
 * Net areas by GEOS 3.13 (geos-wasm 3.1.1): a different overlay in floating point, no grid. A ring that crosses
 * itself is made valid by its linework, which is even-odd, as in our kernel.
 */
export interface GeosNetArea {
  /** Area of a zone less all of its beds; NaN when GEOS itself gave up. */
  netAreaM2(zone: Ring, beds: readonly Ring[]): number;
  /** Area of a ring grown (or shrunk, below 0) with round corners of 64 chords a quarter. */
  grownAreaM2(ring: Ring, byM: number): number;
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
  return {
    netAreaM2(zone, beds) {
      let left = read(polygonText(zone));
      // One bed after another, so that no union of our making stands between the two kernels.
      for (const bed of beds) {
        const cut = read(polygonText(bed));
        const next = geos.GEOSDifference(left, cut);
        geos.GEOSGeom_destroy(left);
        geos.GEOSGeom_destroy(cut);
        if (next === 0) return Number.NaN;
        left = next;
      }
      const areaM2 = areaOf(left);
      geos.GEOSGeom_destroy(left);
      return areaM2;
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

function polygonText(ring: Ring): string {
  const corners = [...ring, ring[0]].map((corner) => `${corner?.xM} ${corner?.yM}`);
  return `POLYGON ((${corners.join(', ')}))`;
}
