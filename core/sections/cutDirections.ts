import type { Region, YardPoint } from '../spaces.ts';
import type { Direction } from './facing.ts';

/** A way a cut may run. `aligned`: along or square to the lanes. */
export interface CutDirection {
  readonly normal: Direction;
  readonly aligned: boolean;
}

/** How many of the longest edges lend their direction. */
const LONG_EDGES = 5;
/** Directions nearer than this are one: 2 degrees. */
const SAME_DIRECTION_RAD = Math.PI / 90;

/**
 * Directions worth trying for a cut: the lanes and square to them, the longest edges and square to those, and a
 * fan. Only half a turn: the other half is the same lines.
 *
 * @param laneRad direction of the lanes, counter-clockwise from east
 */
export function cutDirections(region: Region, laneRad: number, fan: number): CutDirection[] {
  const angles: { rad: number; aligned: boolean }[] = [];
  const add = (rad: number, aligned: boolean): void => {
    const half = ((rad % Math.PI) + Math.PI) % Math.PI;
    const isKnown = angles.some((known) => {
      const apart = Math.abs(known.rad - half);
      return Math.min(apart, Math.PI - apart) < SAME_DIRECTION_RAD;
    });
    if (!isKnown) angles.push({ rad: half, aligned });
  };
  const addBoth = (rad: number, aligned: boolean): void => {
    add(rad, aligned);
    add(rad + Math.PI / 2, aligned);
  };
  addBoth(laneRad, true);
  for (const edgeRad of longEdgeDirections(region)) addBoth(edgeRad, false);
  for (let i = 0; i < fan; i++) add(laneRad + (i * Math.PI) / fan, false);
  return angles.map(({ rad, aligned }) => ({ normal: { x: Math.sin(rad), y: -Math.cos(rad) }, aligned }));
}

function longEdgeDirections(region: Region): number[] {
  return [region.outer, ...region.holes]
    .flatMap((ring) =>
      ring.map((from, i) => {
        const to = ring[(i + 1) % ring.length] as YardPoint;
        const x = to.xM - from.xM;
        const y = to.yM - from.yM;
        return { lengthM: Math.hypot(x, y), rad: Math.atan2(y, x) };
      }),
    )
    .sort((a, b) => b.lengthM - a.lengthM)
    .slice(0, LONG_EDGES)
    .map((edge) => edge.rad);
}
