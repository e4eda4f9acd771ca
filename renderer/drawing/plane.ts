import type { Ring, YardPoint } from '../../core/spaces.ts';

/** Straight-line steps for the hand on the sketch. Areas are the kernel's business, not this file's. */
export function distanceM(a: YardPoint, b: YardPoint): number {
  return Math.hypot(a.xM - b.xM, a.yM - b.yM);
}

/** The foot of a point on the endless line through `through` along (dx, dy); undefined when that is no direction. */
export function nearestOnLine(
  through: YardPoint,
  dx: number,
  dy: number,
  at: YardPoint,
): YardPoint | undefined {
  const length2 = dx * dx + dy * dy;
  if (length2 === 0) return undefined;
  const along = ((at.xM - through.xM) * dx + (at.yM - through.yM) * dy) / length2;
  return { xM: through.xM + along * dx, yM: through.yM + along * dy };
}

/** The point of the edge from `from` to `to` nearest to `at`. */
export function nearestOnEdge(from: YardPoint, to: YardPoint, at: YardPoint): YardPoint {
  const dx = to.xM - from.xM;
  const dy = to.yM - from.yM;
  const length2 = dx * dx + dy * dy;
  if (length2 === 0) return from;
  const along = ((at.xM - from.xM) * dx + (at.yM - from.yM) * dy) / length2;
  const held = Math.min(1, Math.max(0, along));
  return { xM: from.xM + held * dx, yM: from.yM + held * dy };
}

export function middle(a: YardPoint, b: YardPoint): YardPoint {
  return { xM: (a.xM + b.xM) / 2, yM: (a.yM + b.yM) / 2 };
}

export function moved(point: YardPoint, eastM: number, northM: number): YardPoint {
  return { xM: point.xM + eastM, yM: point.yM + northM };
}

/** The point so far from another along a compass bearing (degrees from north, clockwise). */
export function alongBearing(from: YardPoint, lengthM: number, bearingDeg: number): YardPoint {
  const bearingRad = (bearingDeg * Math.PI) / 180;
  return moved(from, lengthM * Math.sin(bearingRad), lengthM * Math.cos(bearingRad));
}

/** Compass bearing from one point to another, 0 <= bearing < 360; undefined when they are the same point. */
export function bearingDegOf(from: YardPoint, to: YardPoint): number | undefined {
  const east = to.xM - from.xM;
  const north = to.yM - from.yM;
  if (east === 0 && north === 0) return undefined;
  return ((Math.atan2(east, north) * 180) / Math.PI + 360) % 360;
}

/** The point so far along a line from its start; undefined past its end. */
export function alongLine(line: Ring, lengthM: number): YardPoint | undefined {
  let left = lengthM;
  for (const [i, from] of line.entries()) {
    const to = line[i + 1];
    if (to === undefined) break;
    const edgeM = distanceM(from, to);
    if (left <= edgeM && edgeM > 0) {
      const share = left / edgeM;
      return { xM: from.xM + share * (to.xM - from.xM), yM: from.yM + share * (to.yM - from.yM) };
    }
    left -= edgeM;
  }
  return undefined;
}

/** The corner after corner `at`, the first following the last. */
export function cornerAfter(ring: Ring, at: number): YardPoint | undefined {
  return ring[(at + 1) % ring.length];
}

/** The corner before corner `at`, the last coming before the first. */
export function cornerBefore(ring: Ring, at: number): YardPoint | undefined {
  return ring[(at + ring.length - 1) % ring.length];
}

/** Even-odd: a point on an edge may fall either way, which is fine for a click. */
export function ringHolds(ring: Ring, at: YardPoint): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const a = ring[i];
    const b = ring[j];
    if (a === undefined || b === undefined) continue;
    if (a.yM > at.yM === b.yM > at.yM) continue;
    if (at.xM < ((b.xM - a.xM) * (at.yM - a.yM)) / (b.yM - a.yM) + a.xM) inside = !inside;
  }
  return inside;
}
