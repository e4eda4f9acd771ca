import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { UnitSystem } from '../units/index.ts';
import { isOnMark, missCost, OFF_MARK, tapeCost, THROUGH_A_HOUSE } from './ease.ts';
import type { NamedPoint } from './namedPoints.ts';
import { alongAndLeft, asPrintedM, placeAlong } from './placing.ts';
import type { Way } from './setting.ts';
import type { IsBlocked } from './tapeWalls.ts';

/** A place this near to the line through two flags is on it. */
const ON_LINE_M = 0.01;
/** Past the second flag by more than this share of the way between the two, an error of theirs grows too much. */
const MOST_PAST = 0.5;
/** Going on past the second flag is sighted back. */
const PAST = 2;

/**
 * The ways to find a place along the line between two flags that stand already.
 *
 * @param onLine flags that stand on one row of cuts with the place: where they belong, and as they were set
 */
export function lineWays(
  at: YardPoint,
  onLine: readonly { readonly point: NamedPoint; readonly place: YardPoint }[],
  units: UnitSystem,
  isBlocked: IsBlocked,
): Way[] {
  return onLine.flatMap((from) =>
    onLine.flatMap((towards): Way[] => {
      if (from === towards) return [];
      const wayM = distanceM(from.place, towards.place);
      const { alongM, leftM } = alongAndLeft(from.place, towards.place, at);
      if (Math.abs(leftM) > ON_LINE_M || alongM <= 0 || alongM > (1 + MOST_PAST) * wayM) return [];
      const printedM = asPrintedM(alongM, units);
      const asSet = placeAlong(from.point.at, towards.point.at, printedM);
      return [
        {
          setting: { kind: 'line', from: from.point, towards: towards.point, alongM: printedM },
          asSet,
          cost:
            tapeCost(printedM) +
            // The farther the second flag, the truer the line.
            (alongM > wayM ? PAST : alongM / wayM) +
            (isOnMark(printedM, units) ? 0 : OFF_MARK / 4) +
            (isBlocked(from.place, at) || isBlocked(from.place, towards.place) ? THROUGH_A_HOUSE : 0) +
            missCost(at, asSet),
        },
      ];
    }),
  );
}
