import { MOST_REACH_M } from '../../../core/kernel/index.ts';
import { ok, type Result, trouble } from '../../../core/result.ts';
import type { YardPoint } from '../../../core/spaces.ts';

/** Within this the yard frame is true to a part in ten million and there is nothing to say. */
const QUIET_REACH_M = 2000;

/**
 * Whether everything brought lies near enough to the yard's origin, with a note where the frame's own stretch
 * begins to show: areas grow by x²/R² at x metres east or west of the origin, R the earth's radius.
 * Problems: shape/too-large
 */
export function checkReach(name: string, points: readonly YardPoint[]): Result<readonly string[]> {
  const reachM = points.reduce((most, { xM, yM }) => Math.max(most, Math.hypot(xM, yM)), 0);
  if (!(reachM <= MOST_REACH_M)) {
    return trouble({
      kind: 'shape/too-large',
      where: { outlineId: '', name },
      facts: { extentM: 2 * reachM },
    });
  }
  if (reachM <= QUIET_REACH_M) return ok([]);
  return ok([
    'It reaches far from the middle of the yard; areas out there are true to 3 parts in a million.',
  ]);
}
