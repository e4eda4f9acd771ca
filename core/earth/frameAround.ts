import type { LonLat } from '../spaces.ts';

/**
 * The origin in the middle of the given places: halfway between the outermost latitudes and longitudes. Across
 * the antimeridian the short way round is taken.
 *
 * @param places at least one
 */
export function frameAround(places: readonly LonLat[]): LonLat {
  const first = places[0]?.lonDeg ?? 0;
  // Longitudes are unrolled about the first place, so that 179.9 and -179.9 are 0.2 degrees apart.
  const lons = places.map(({ lonDeg }) => first + turn(lonDeg - first));
  const lats = places.map(({ latDeg }) => latDeg);
  return { lonDeg: turn(middle(lons)), latDeg: middle(lats) };
}

/** An angle as -180 up to, but not including, 180 degrees. */
function turn(deg: number): number {
  return ((((deg + 180) % 360) + 360) % 360) - 180;
}

function middle(values: readonly number[]): number {
  let [least, most] = [Infinity, -Infinity];
  for (const value of values) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return (least + most) / 2;
}
