import { isReflex } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { type HoleTie, tiesOf } from './holeTies.ts';

/** A corner seen from a cut direction: `uM` along the normal of the cut, `vM` along the cut itself. */
export interface Corner {
  readonly at: YardPoint;
  readonly index: number;
  readonly ring: number;
  readonly uM: number;
  readonly vM: number;
  /** Whether the ground has more than half a turn inside this corner. */
  readonly reflex: boolean;
  /** The corner after this one in its ring; together they are an edge. */
  next: Corner;
}

export interface Direction {
  readonly x: number;
  readonly y: number;
}

/** A region's corners turned so that a cut is a line of constant `uM`. */
export interface Facing {
  readonly normal: Direction;
  readonly region: Region;
  readonly corners: readonly Corner[];
  /** Every distinct corner level, rising. */
  readonly levelsM: readonly number[];
  /** Integral of u dv along each corner's ring from its first corner, and all the way round each ring. */
  readonly sweptM2: Float64Array;
  readonly ringM2: readonly number[];
  readonly ties: () => readonly HoleTie[];
}

/** Corners nearer than this to a cut lie on it, and count as below: one rule, so both sides agree. */
export const ON_CUT_M = 1e-9;

/** A region's corners before it is turned: what does not depend on the direction, worked out once. */
export interface Unturned {
  readonly region: Region;
  readonly rings: readonly (readonly { readonly at: YardPoint; readonly reflex: boolean }[])[];
  /** Worked out when first asked for. */
  readonly ties: () => readonly HoleTie[];
}

/** Prepares a region to be faced along many directions. */
export function cornersOf(region: Region): Unturned {
  const rings = [region.outer, ...region.holes].map((ring) =>
    ring.map((at, place) => ({ at, reflex: isReflex(ring, place) })),
  );
  let known: readonly HoleTie[] | undefined;
  const ties = (): readonly HoleTie[] => {
    known ??= tiesOf(region);
    return known;
  };
  return { region, rings, ties };
}

/**
 * Turns a region to face along `normal` (a unit vector). Distances are taken from its first corner, so that a
 * yard far from the origin loses no digits.
 */
export function faceAlong({ region, rings, ties }: Unturned, normal: Direction): Facing {
  const origin = region.outer[0] ?? { xM: 0, yM: 0 };
  const corners: Corner[] = [];
  rings.forEach((ring, ringIndex) => {
    let last: Corner | undefined;
    const start = corners.length;
    for (const { at, reflex } of ring) {
      const x = at.xM - origin.xM;
      const y = at.yM - origin.yM;
      const uM = x * normal.x + y * normal.y;
      const vM = y * normal.x - x * normal.y;
      // `next` is set just below, for the last corner once the ring is whole.
      const corner = { at, index: corners.length, ring: ringIndex, uM, vM, reflex } as Corner;
      if (last !== undefined) last.next = corner;
      last = corner;
      corners.push(corner);
    }
    if (last !== undefined) last.next = corners[start] as Corner;
  });
  const sorted = Float64Array.from(corners, (corner) => corner.uM).sort();
  const levelsM = Array.from(sorted).filter((levelM, i) => i === 0 || levelM !== sorted[i - 1]);
  return { normal, region, corners, levelsM, ...sweptAlong(corners, rings.length), ties };
}

function sweptAlong(corners: readonly Corner[], rings: number): Pick<Facing, 'sweptM2' | 'ringM2'> {
  const sweptM2 = new Float64Array(corners.length);
  const ringM2 = new Array<number>(rings).fill(0);
  for (const { ring, index, uM, vM, next } of corners) {
    const soFarM2 = (sweptM2[index] as number) + ((uM + next.uM) / 2) * (next.vM - vM);
    if (next.index > index) sweptM2[next.index] = soFarM2;
    else ringM2[ring] = soFarM2;
  }
  return { sweptM2, ringM2 };
}

/**
 * Area of the part with u <= level. By Green's theorem area = closed integral of (u - level) dv, and on the cut itself
 * u - level is zero: so the sum over the edges' parts below is the whole answer, whatever pieces it falls into.
 */
export function areaBelowM2(facing: Pick<Facing, 'corners'>, levelM: number): number {
  let areaM2 = 0;
  for (const a of facing.corners) {
    const b = a.next;
    const ua = a.uM - levelM;
    const ub = b.uM - levelM;
    const dv = b.vM - a.vM;
    if (ua <= 0 && ub <= 0) areaM2 += ((ua + ub) / 2) * dv;
    else if (ua <= 0) areaM2 += (((ua / 2) * ua) / (ua - ub)) * dv;
    else if (ub <= 0) areaM2 += (((ub / 2) * ub) / (ub - ua)) * dv;
  }
  return areaM2;
}

/** Length of the cut just above or just below a level: minus the integral of dv over what lies below it. */
function chordM(facing: Facing, levelM: number, side: 'above' | 'below'): number {
  let lengthM = 0;
  for (const a of facing.corners) {
    const b = a.next;
    const aIn = side === 'above' ? a.uM <= levelM : a.uM < levelM;
    const bIn = side === 'above' ? b.uM <= levelM : b.uM < levelM;
    const dv = b.vM - a.vM;
    if (aIn && bIn) lengthM -= dv;
    else if (aIn) lengthM -= (dv * (levelM - a.uM)) / (b.uM - a.uM);
    else if (bIn) lengthM -= (dv * (levelM - b.uM)) / (a.uM - b.uM);
  }
  return lengthM;
}

/**
 * Level u below which exactly `targetM2` of the region lies.
 *
 * Accuracy: rounding only, no iteration; checked in tests/core/sections/facing.test.ts
 * Cost: n log n in the corners
 * Source: between two corner levels the chord is linear, l(t) = l + s t, so the area is quadratic in t and the
 *   step for a missing dA is 2 dA / (l + sqrt(l^2 + 2 s dA)), the form of the root that never cancels. Own work.
 */
export function levelForAreaM(facing: Facing, targetM2: number): number {
  const { levelsM } = facing;
  let low = 0;
  let high = levelsM.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (areaBelowM2(facing, levelsM[middle] as number) <= targetM2) low = middle;
    else high = middle;
  }
  const fromM = levelsM[low] as number;
  const toM = levelsM[high] as number;
  const startM = chordM(facing, fromM, 'above');
  const slope = (chordM(facing, toM, 'below') - startM) / (toM - fromM);
  return fromM + stepForAreaM(targetM2 - areaBelowM2(facing, fromM), startM, slope);
}

/** The root above: how far a chord of length `chordLengthM` changing by `slope` moves to sweep `areaM2`. */
export function stepForAreaM(areaM2: number, chordLengthM: number, slope: number): number {
  const root = Math.sqrt(Math.max(0, chordLengthM * chordLengthM + 2 * slope * areaM2));
  const sum = chordLengthM + root;
  return sum > 0 ? (2 * areaM2) / sum : 0;
}
