/** Direction in the yard frame, in radians counter-clockwise from east, of a compass bearing. */
export function radOfBearing(bearingDeg: number): number {
  return ((90 - bearingDeg) * Math.PI) / 180;
}

/** The same compass bearing without whole turns: 0 <= bearing < 360. */
export function wholeBearing(bearingDeg: number): number {
  return ((bearingDeg % 360) + 360) % 360;
}

/** Compass bearing of the way so far east and north, 0 <= bearing < 360; 0 for no way at all. */
export function bearingOfWay(eastM: number, northM: number): number {
  return wholeBearing((Math.atan2(eastM, northM) * 180) / Math.PI);
}
