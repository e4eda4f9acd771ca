import type { AreaSpread } from '../../core/area/index.ts';
import type { Ground } from '../../core/zones/index.ts';
import { straight } from '../../core/curves/index.ts';
import { newOutline } from '../../core/edits/index.ts';
import type { Region, Ring, YardPoint } from '../../core/spaces.ts';
import type { Outline, OutlineKind } from '../../core/yard.ts';

export function points(...corners: readonly (readonly [number, number])[]): YardPoint[] {
  return corners.map(([xM, yM]) => ({ xM, yM }));
}

/** Counter-clockwise rectangle from its south-west corner. */
export function rect(xM: number, yM: number, widthM: number, heightM: number): YardPoint[] {
  return points([xM, yM], [xM + widthM, yM], [xM + widthM, yM + heightM], [xM, yM + heightM]);
}

/** Counter-clockwise L: a rectangle without its north-east part of the given size. */
export function lShape(
  widthM: number,
  heightM: number,
  notchWidthM: number,
  notchHeightM: number,
): YardPoint[] {
  return points(
    [0, 0],
    [widthM, 0],
    [widthM, heightM - notchHeightM],
    [widthM - notchWidthM, heightM - notchHeightM],
    [widthM - notchWidthM, heightM],
    [0, heightM],
  );
}

/** Regular counter-clockwise polygon; its area is n/2 r² sin(2π/n). */
export function regularPolygon(centre: YardPoint, radiusM: number, corners: number): YardPoint[] {
  return Array.from({ length: corners }, (_, i) => ({
    xM: centre.xM + radiusM * Math.cos((2 * Math.PI * i) / corners),
    yM: centre.yM + radiusM * Math.sin((2 * Math.PI * i) / corners),
  }));
}

/** A region; holes are turned clockwise if they were built the other way round, as `rect` does. */
export function region(outer: Ring, ...holes: readonly Ring[]): Region {
  return { outer, holes: holes.map((hole) => (turnsLeft(hole) ? [...hole].reverse() : hole)) };
}

/** The same region with one more hole. */
export function withBed(from: Region, bed: Ring): Region {
  return region(from.outer, ...from.holes, bed);
}

/** An outline named and identified by `name`. */
export function outline(kind: OutlineKind, name: string, outer: Ring, ...holes: readonly Ring[]): Outline {
  return newOutline({ id: name, kind, name, outer: straight(outer), holes: holes.map(straight) });
}

/** Outlines as a yard's ground, level, the first drawn owning what two share. */
export function groundOf(outlines: readonly Outline[], cornerSigmaM: number | null = null): Ground {
  const details = { cornerSigmaM, overlapRule: 'drawn-first', amountsBy: 'plan' } as const;
  return { details, outlines, pictures: [], elevations: [] };
}

/** The spread of an area that shares no error with another; null = not stated. */
export function spreadOf(id: string, sigmaM2: number | null): AreaSpread {
  const cause = { at: { xM: 0, yM: 0 }, outlineId: id, ring: 0, own: 0, from: null };
  const errors = sigmaM2 === null ? [] : [{ cause, sigma: 1, eastM2: sigmaM2, northM2: 0 }];
  return { errors, unstated: sigmaM2 === null ? [id] : [], unstatedScales: [] };
}

export function mapRing(ring: Ring, move: (point: YardPoint) => YardPoint): YardPoint[] {
  return ring.map(move);
}

/** Turned counter-clockwise about the origin, then moved. */
export function moved(ring: Ring, turnRad: number, byXM: number, byYM: number): YardPoint[] {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return mapRing(ring, ({ xM, yM }) => ({ xM: cos * xM - sin * yM + byXM, yM: sin * xM + cos * yM + byYM }));
}

function turnsLeft(ring: Ring): boolean {
  let twice = 0;
  for (const [i, { xM, yM }] of ring.entries()) {
    const next = ring[(i + 1) % ring.length] as YardPoint;
    twice += xM * next.yM - next.xM * yM;
  }
  return twice > 0;
}

/** What a resolved zone says of ground that does not slope. */
export const LEVEL = { slope: null, surfaceFactor: 1, amountFactor: 1 } as const;
