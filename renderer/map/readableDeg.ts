/** A line's direction on the screen, turned so that words along it read from below or from the right, never upside down. */
export function readableDeg(turnDeg: number): number {
  return turnDeg >= 89.99 || turnDeg < -90.01 ? turnDeg + 180 : turnDeg;
}
