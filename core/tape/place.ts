import { checkRing, signedAreaM2 } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Ring, YardPoint } from '../spaces.ts';

/** Where a taped figure stands: its first corner (or its middle) and the bearing its first side runs on. */
export interface Place {
  readonly at: YardPoint;
  /** Degrees clockwise from north. */
  readonly bearingDeg: number;
}

/** A point of a figure before it is placed: metres along its first side, and metres to the left of it. */
export interface TapePoint {
  readonly alongM: number;
  readonly leftM: number;
}

/** The point so far along a bearing and so far to the left of it. Along × left has turn +1, so rings keep their sense. */
export function placed({ at, bearingDeg }: Place, { alongM, leftM }: TapePoint): YardPoint {
  const bearingRad = (bearingDeg * Math.PI) / 180;
  const east = Math.sin(bearingRad);
  const north = Math.cos(bearingRad);
  return { xM: at.xM + alongM * east - leftM * north, yM: at.yM + alongM * north + leftM * east };
}

/** A figure set down at its place, counter-clockwise with its first corner still first, once it can stand for ground. */
export function placeRing(name: string, place: Place, points: readonly TapePoint[]): Result<Ring> {
  return groundRing(
    name,
    points.map((point) => placed(place, point)),
  );
}

/** A ring that may stand for ground, turned counter-clockwise about its first corner. */
export function groundRing(name: string, ring: Ring): Result<Ring> {
  const checked = checkRing(ring, '', name);
  if (!checked.ok) return checked;
  const [first, ...rest] = ring as readonly [YardPoint, ...YardPoint[]];
  return ok(signedAreaM2(ring) < 0 ? [first, ...rest.reverse()] : ring);
}

/** Passes when every named size is a length above zero; otherwise says each that is not. */
export function requirePositive(sizesM: Readonly<Record<string, number>>): Result<null> {
  const problems = Object.entries(sizesM)
    .filter(([, sizeM]) => !(sizeM > 0 && Number.isFinite(sizeM)))
    .map(([field]): Problem => ({ kind: 'value/not-positive', where: { field }, facts: {} }));
  const [first, ...more] = problems;
  return first === undefined ? ok(null) : trouble(first, ...more);
}

/** Passes when there are enough measured lines for a figure. */
export function requireCount(field: string, found: number, least: number): Result<null> {
  return found >= least
    ? ok(null)
    : trouble({ kind: 'value/too-few', where: { field }, facts: { found, least } });
}
