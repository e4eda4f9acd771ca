/** Direction in the yard frame, in radians counter-clockwise from east, of a compass bearing. */
export function radOfBearing(bearingDeg: number): number {
  return ((90 - bearingDeg) * Math.PI) / 180;
}
