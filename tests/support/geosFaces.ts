import initGeosJs from 'geos-wasm';
import type { Ring, YardPoint } from '../../core/spaces.ts';

/** A piece of the plane that no edge runs through. */
export interface GeosFace {
  readonly areaM2: number;
  /** A place inside it. */
  readonly at: YardPoint;
}

export interface GeosFaces {
  /** All pieces that some rings cut the plane into; the ground round them all is none. */
  facesOf(rings: readonly Ring[]): GeosFace[];
}

/**
 * The plane cut up by GEOS 3.13 (geos-wasm 3.1.1): edges are noded in floating point and the faces between them found,
 * without any notion of what a ring holds.
 */
export async function startGeosFaces(): Promise<GeosFaces> {
  const geos = await initGeosJs();
  const reader = geos.GEOSWKTReader_create();
  const read = (wkt: string): number => {
    const size = wkt.length + 1;
    const text = geos.Module._malloc(size);
    geos.Module.stringToUTF8(wkt, text, size);
    const shape = geos.GEOSWKTReader_read(reader, text);
    geos.Module._free(text);
    return shape;
  };
  const place = geos.Module._malloc(8);
  // The package's types have the last two arguments of this one the wrong way round.
  const { setValue } = geos.Module as unknown as {
    setValue(place: number, value: number, type: 'i32'): void;
  };
  const doubleOf = (ask: (place: number) => number): number => {
    if (ask(place) !== 1) throw new Error('GEOS gave up');
    return geos.Module.getValue(place, 'double');
  };
  const faceOf = (face: number): GeosFace => {
    const point = geos.GEOSPointOnSurface(face);
    const at = {
      xM: doubleOf((to) => geos.GEOSGeomGetX(point, to)),
      yM: doubleOf((to) => geos.GEOSGeomGetY(point, to)),
    };
    geos.GEOSGeom_destroy(point);
    return { areaM2: doubleOf((to) => geos.GEOSArea(face, to)), at };
  };
  return {
    facesOf(rings) {
      const drawn = read(`MULTILINESTRING (${rings.map(closedText).join(', ')})`);
      const noded = geos.GEOSUnaryUnion(drawn);
      setValue(place, noded, 'i32');
      const faces = geos.GEOSPolygonize(place, 1);
      const count = geos.GEOSGetNumGeometries(faces);
      const found = Array.from({ length: count }, (_, i) => faceOf(geos.GEOSGetGeometryN(faces, i)));
      for (const shape of [drawn, noded, faces]) geos.GEOSGeom_destroy(shape);
      return found;
    },
  };
}

/** Whether rings wind round a place, in sum, other than 0 times; plain floating point. */
export function windsRound(rings: readonly Ring[], { xM, yM }: YardPoint): boolean {
  let winds = 0;
  for (const ring of rings) {
    let a = ring.at(-1) as YardPoint;
    for (const b of ring) {
      const isUp = b.yM > yM;
      if (a.yM > yM !== isUp && a.xM + ((yM - a.yM) / (b.yM - a.yM)) * (b.xM - a.xM) > xM)
        winds += isUp ? 1 : -1;
      a = b;
    }
  }
  return winds !== 0;
}

function closedText(ring: Ring): string {
  return lineText([...ring, ring[0] as YardPoint]);
}

function lineText(line: readonly YardPoint[]): string {
  return `(${line.map(({ xM, yM }) => `${xM} ${yM}`).join(', ')})`;
}
