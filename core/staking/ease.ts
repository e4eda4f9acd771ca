import { distanceM } from '../kernel/index.ts';
import { tapeMarkM } from '../sections/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { UnitSystem } from '../units/index.ts';
import type { OutlineKind } from '../yard.ts';
import type { NamedPoint, PointKind } from './namedPoints.ts';

/**
 * How easy a way to set a flag is, so that ways compare: ten metres of tape cost 1, and what else is asked of a
 * person costs as much as the tape they would rather pull. All of it is our own judgement; no flag depends on it to
 * stand where it belongs.
 */
const PER_TAPE_M = 0.1;
/** A tape in a garden is 30 m or 100 ft; longer is two pulls. */
const TAPE_M = 30;
const PER_TAPE_BEYOND_M = 0.4;
/** A distance that is no whole mark is easier misread. */
export const OFF_MARK = 4;
/** Two tapes want a second person: they are for curves, and for where no straight side helps. */
export const SECOND_TAPE = 20;
/** A way that the printed figures leave off by more than this is taken only where there is no other. */
const GOOD_M = 0.025;
const PER_METRE_OFF = 1000;
/** A tape or a sight line through a house is taken only where there is no other. */
export const THROUGH_A_HOUSE = 300;

const POINTS: Readonly<Record<PointKind, number>> = {
  landmark: 0,
  spigot: 0.5,
  corner: 2,
  flag: 3,
  bend: 12,
};

/** Walls stand out better than the edge of a lawn or of water, and a keep-off line is not seen at all. */
const CORNERS: Readonly<Record<OutlineKind, number>> = {
  building: 0,
  hardscape: 0.5,
  zone: 1,
  tree: 1,
  bed: 1.5,
  water: 2.5,
  'keep-off': 8,
  'check-plot': 8,
};

export function pointCost({ kind, outline }: NamedPoint): number {
  return POINTS[kind] + (outline === null ? 0 : CORNERS[outline.kind]);
}

export function tapeCost(lengthM: number): number {
  return lengthM * PER_TAPE_M + Math.max(0, lengthM - TAPE_M) * PER_TAPE_BEYOND_M;
}

export function missCost(at: YardPoint, asSet: YardPoint): number {
  return Math.max(0, distanceM(at, asSet) - GOOD_M) * PER_METRE_OFF;
}

/** Nearer than this to a mark, a distance is printed as one. */
const ON_MARK_M = 0.002;

export function isOnMark(lengthM: number, units: UnitSystem): boolean {
  const markM = tapeMarkM(units);
  return Math.abs(lengthM - Math.round(lengthM / markM) * markM) <= ON_MARK_M;
}
