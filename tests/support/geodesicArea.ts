import geographic from 'geographiclib-geodesic';
import type { LonLat } from '../../core/spaces.ts';

/** Area and perimeter on the WGS84 ellipsoid by geodesic edges (geographiclib-geodesic 2.2.0, Karney 2013). */
export function geodesicPolygon(ring: readonly LonLat[]): {
  readonly areaM2: number;
  readonly perimeterM: number;
} {
  const polygon = geographic.Geodesic.WGS84.Polygon(false);
  for (const { lonDeg, latDeg } of ring) polygon.AddPoint(latDeg, lonDeg);
  const { area, perimeter } = polygon.Compute(false, true);
  return { areaM2: area ?? Number.NaN, perimeterM: perimeter };
}
