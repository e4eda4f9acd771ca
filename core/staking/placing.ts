import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import { twoTapes, type TieSide } from '../tape/index.ts';
import { FOOT_M, type UnitSystem } from '../units/index.ts';

/** What a tape is read to: an inch or a centimetre, as `formatTape` prints it. */
export function tapeStepM(units: UnitSystem): number {
  return units === 'us' ? FOOT_M / 12 : 0.01;
}

/** A distance as it is printed. */
export function asPrintedM(lengthM: number, units: UnitSystem): number {
  const stepM = tapeStepM(units);
  return Math.round(lengthM / stepM) * stepM;
}

/** So far from one place towards another, then so far to the left of that way. */
export function placeAlong(from: YardPoint, towards: YardPoint, alongM: number, leftM = 0): YardPoint {
  const lengthM = distanceM(from, towards);
  const [x, y] = [(towards.xM - from.xM) / lengthM, (towards.yM - from.yM) / lengthM];
  return { xM: from.xM + x * alongM - y * leftM, yM: from.yM + y * alongM + x * leftM };
}

/** How far along the way from one place to another a point lies, and how far to its left. */
export function alongAndLeft(
  from: YardPoint,
  towards: YardPoint,
  at: YardPoint,
): { readonly alongM: number; readonly leftM: number } {
  const lengthM = distanceM(from, towards);
  const [x, y] = [(towards.xM - from.xM) / lengthM, (towards.yM - from.yM) / lengthM];
  const [byX, byY] = [at.xM - from.xM, at.yM - from.yM];
  return { alongM: byX * x + byY * y, leftM: byY * x - byX * y };
}

/** Where two tapes meet on one side of the way between their ends; undefined when they do not. */
export function placeByTapes(
  [first, firstM]: readonly [YardPoint, number],
  [second, secondM]: readonly [YardPoint, number],
  side: TieSide,
): YardPoint | undefined {
  const tie = twoTapes(first, second, firstM, secondM, side);
  return tie.ok ? tie.value.at : undefined;
}
