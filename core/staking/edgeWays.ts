import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { UnitSystem } from '../units/index.ts';
import { isOnMark, missCost, OFF_MARK, pointCost, tapeCost, THROUGH_A_HOUSE } from './ease.ts';
import { alongAndLeft, asPrintedM, placeAlong } from './placing.ts';
import type { Way } from './setting.ts';
import type { StraightSide } from './straightSides.ts';
import type { IsBlocked } from './tapeWalls.ts';

/** Square to a side by eye is good for no more than this, but for the strips kept off along it. */
const MOST_OFF_M = 1;
/** What stepping off the side costs, and each metre of it where no strip ends there. */
const STEP_OFF = 2;
const PER_METRE_OFF = 12;
/** An end this near to a strip's width is on the far edge of the strip. */
const ON_STRIP_M = 0.02;
/** Past the end of a side by no more than rounding. */
const PAST_M = 0.005;

/** The ways to find a place along the straight sides it lies on or near, from either end of each. */
export function edgeWays(
  at: YardPoint,
  sides: readonly StraightSide[],
  units: UnitSystem,
  isBlocked: IsBlocked,
): Way[] {
  return sides.flatMap((side) => {
    const { from, to, isInLeft, stripWidthsM } = side;
    const lengthM = distanceM(from.at, to.at);
    const { alongM, leftM } = alongAndLeft(from.at, to.at, at);
    if (alongM < -PAST_M || alongM > lengthM + PAST_M) return [];
    const isOnStrip = stripWidthsM.some((widthM) => Math.abs(Math.abs(leftM) - widthM) <= ON_STRIP_M);
    if (Math.abs(leftM) > MOST_OFF_M && !isOnStrip) return [];
    const byM = asPrintedM(Math.abs(leftM), units);
    const offSide = leftM > 0 === isInLeft ? 'in' : 'out';
    const offCost = byM === 0 ? 0 : STEP_OFF + (isOnStrip ? tapeCost(byM) : PER_METRE_OFF * byM);
    return [
      { corner: from, towards: to, alongM },
      { corner: to, towards: from, alongM: lengthM - alongM },
    ].map(({ corner, towards, alongM }): Way => {
      const printedM = asPrintedM(Math.max(0, alongM), units);
      const foot = placeAlong(corner.at, towards.at, printedM);
      const left = offSide === 'in' ? isInLeft : !isInLeft;
      const asSet = placeAlong(corner.at, towards.at, printedM, left === (corner === from) ? byM : -byM);
      return {
        setting: {
          kind: 'edge',
          corner,
          towards,
          alongM: printedM,
          off: byM === 0 ? null : { byM, side: offSide },
        },
        asSet,
        cost:
          pointCost(corner) +
          tapeCost(printedM) +
          offCost +
          (isOnMark(printedM, units) ? 0 : OFF_MARK) +
          (isBlocked(corner.at, foot) || (byM > 0 && isBlocked(foot, asSet)) ? THROUGH_A_HOUSE : 0) +
          missCost(at, asSet),
      };
    });
  });
}
