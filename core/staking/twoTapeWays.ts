import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { UnitSystem } from '../units/index.ts';
import { missCost, pointCost, SECOND_TAPE, tapeCost, THROUGH_A_HOUSE } from './ease.ts';
import { fullName, type NamedPoint } from './namedPoints.ts';
import { alongAndLeft, asPrintedM, placeByTapes } from './placing.ts';
import type { Way } from './setting.ts';
import type { IsBlocked } from './tapeWalls.ts';

/** Tapes that cross flatter leave the flag loose: at 30° an error of one tape moves it twice as far. */
const LEAST_SINE = 0.5;
/** What a flatter crossing costs, times how much more than its error one tape moves the flag. */
const PER_LOOSENESS = 4;
const LOOSE = 400;
/** The best so many points are tried in pairs. */
const MOST_POINTS = 16;
/** Nearer than this, a tape's end says nothing about its direction. */
const LEAST_TAPE_M = 0.3;

/** The ways to find a place by two tapes from named points or flags that stand already. */
export function twoTapeWays(
  at: YardPoint,
  points: readonly NamedPoint[],
  units: UnitSystem,
  isBlocked: IsBlocked,
): Way[] {
  const near = points
    .map((point) => {
      const lengthM = distanceM(point.at, at);
      return { point, lengthM, cost: pointCost(point) + tapeCost(lengthM) };
    })
    .filter(({ lengthM }) => lengthM >= LEAST_TAPE_M)
    .sort((a, b) => a.cost - b.cost || (fullName(a.point) < fullName(b.point) ? -1 : 1))
    .slice(0, MOST_POINTS)
    .map((each) => ({ ...each, cost: each.cost + (isBlocked(each.point.at, at) ? THROUGH_A_HOUSE : 0) }));
  return near.flatMap((first, i) =>
    near.slice(i + 1).flatMap((second): Way[] => {
      const sine = Math.abs(sineBetween(at, first.point.at, second.point.at));
      const { leftM } = alongAndLeft(first.point.at, second.point.at, at);
      const side = leftM > 0 ? 'left' : 'right';
      const [firstM, secondM] = [asPrintedM(first.lengthM, units), asPrintedM(second.lengthM, units)];
      const asSet = placeByTapes([first.point.at, firstM], [second.point.at, secondM], side);
      if (asSet === undefined) return [];
      return [
        {
          setting: {
            kind: 'tapes',
            first: { point: first.point, tapeM: firstM },
            second: { point: second.point, tapeM: secondM },
            side,
          },
          asSet,
          cost:
            SECOND_TAPE +
            first.cost +
            second.cost +
            PER_LOOSENESS * (1 / sine - 1) +
            (sine < LEAST_SINE ? LOOSE : 0) +
            missCost(at, asSet),
        },
      ];
    }),
  );
}

/** Of the angle at which the two tapes cross. */
function sineBetween(at: YardPoint, a: YardPoint, b: YardPoint): number {
  const [ax, ay, bx, by] = [a.xM - at.xM, a.yM - at.yM, b.xM - at.xM, b.yM - at.yM];
  return (ax * by - ay * bx) / (Math.hypot(ax, ay) * Math.hypot(bx, by));
}
