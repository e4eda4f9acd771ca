import { bufferLine, distanceM } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';

/** A turn sharper than this is a pivot: the swath starts anew, and what lies inside the turn is treated twice. */
const PIVOT_RAD = Math.PI / 6;
/** After turning this far smoothly the swath may come back on itself, and starts anew too. */
const CURLED_RAD = (5 * Math.PI) / 6;
/** How far the chords of the arc a pivoting swath sweeps on the outside may lie inside it. */
const ARC_SAG_M = 1e-3;
const SAME_M = 1e-9;

/**
 * The ground a walked line treats, in pieces that each treat their ground once: straight or gently bending strips
 * with square ends, and the wedge swept on the outside of each pivot.
 */
export function passSwaths(line: readonly YardPoint[], swathM: number): Region[] {
  const points = line.filter((point, i) => i === 0 || distanceM(point, line[i - 1] as YardPoint) > SAME_M);
  const first = points[0];
  if (first === undefined || points.length < 2) return [];
  const swaths: Region[] = [];
  let strip = [first];
  let curledRad = 0;
  points.forEach((point, i) => {
    if (i === 0) return;
    strip.push(point);
    const next = points[i + 1];
    if (next === undefined) return;
    const before = points[i - 1] as YardPoint;
    const rad = turnRad(before, point, next);
    curledRad += Math.abs(rad);
    if (Math.abs(rad) <= PIVOT_RAD && curledRad <= CURLED_RAD) return;
    swaths.push(...stripGround(strip, swathM), ...wedge(before, point, rad, swathM));
    strip = [point];
    curledRad = 0;
  });
  swaths.push(...stripGround(strip, swathM));
  const last = points.at(-1) as YardPoint;
  if (points.length > 3 && distanceM(first, last) <= SAME_M) {
    const before = points.at(-2) as YardPoint;
    swaths.push(...wedge(before, last, turnRad(before, last, points[1] as YardPoint), swathM));
  }
  return swaths;
}

function stripGround(strip: readonly YardPoint[], swathM: number): Region[] {
  const [a, b, ...more] = strip as [YardPoint, YardPoint, ...YardPoint[]];
  if (more.length > 0) return bufferLine(strip, swathM / 2, 'flat');
  // Most strips are straight, and a straight one needs no overlay.
  const perM = swathM / 2 / distanceM(a, b);
  const x = (b.yM - a.yM) * perM;
  const y = (a.xM - b.xM) * perM;
  const outer = [
    { xM: a.xM + x, yM: a.yM + y },
    { xM: b.xM + x, yM: b.yM + y },
    { xM: b.xM - x, yM: b.yM - y },
    { xM: a.xM - x, yM: a.yM - y },
  ];
  return [{ outer, holes: [] }];
}

/** Positive to the left, in (-pi, pi]. */
function turnRad(a: YardPoint, b: YardPoint, c: YardPoint): number {
  const x = b.xM - a.xM;
  const y = b.yM - a.yM;
  const u = c.xM - b.xM;
  const v = c.yM - b.yM;
  return Math.atan2(x * v - y * u, x * u + y * v);
}

/** What half the swath sweeps on the outside while the walker turns on the spot. */
function wedge(before: YardPoint, at: YardPoint, rad: number, swathM: number): Region[] {
  const sweepRad = Math.abs(rad);
  // A turn right round sweeps nothing that the strips there and back do not treat.
  if (sweepRad < 1e-6 || sweepRad > Math.PI - 1e-3) return [];
  const side = rad > 0 ? -1 : 1;
  const fromRad = Math.atan2(at.yM - before.yM, at.xM - before.xM) + (side * Math.PI) / 2;
  // A chord over an angle a lies r (1 - cos a/2) inside its arc of radius r.
  const stepRad = 2 * Math.acos(Math.max(0, 1 - (2 * ARC_SAG_M) / swathM));
  const steps = Math.max(2, Math.ceil(sweepRad / stepRad));
  const outer = [at];
  for (let step = 0; step <= steps; step++) {
    const atRad = fromRad + (rad * step) / steps;
    outer.push({ xM: at.xM + (swathM / 2) * Math.cos(atRad), yM: at.yM + (swathM / 2) * Math.sin(atRad) });
  }
  return [{ outer: rad > 0 ? outer : outer.toReversed(), holes: [] }];
}
