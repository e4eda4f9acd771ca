import { bearingOfWay } from '../../core/frame/index.ts';
import { distanceM } from '../../core/kernel/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';

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
  return bearingOfWay(east, north);
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
