import {
  bufferLine,
  intersectRegions,
  offsetRegions,
  regionAreaM2,
  regionsAreaM2,
  subtractRegions,
} from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import { laneHeadings } from './headings.ts';
import { type Lane, lanesAcross } from './lanes.ts';

/** A neck narrower than this part of a swath is left alone: more would land beside it than is worth while. */
const NARROWEST_PART = 0.75;
/** Bits of ground smaller than this part of a swath square are corner tips, not necks. */
const SMALLEST_PART = 0.25;
/** Room round the ground a perimeter pass reaches, so that rounding leaves no slivers. */
const ROOM_M = 0.002;

/**
 * A lane down the middle of each straight neck too narrow for a pass half a swath inside both edges.
 *
 * @param reachable where a pass may run: the region half a swath inside its edges
 * @returns lanes that treat mostly new ground and throw no more than a quarter beside it
 */
export function narrowLanes(region: Region, reachable: readonly Region[], swathM: number): Lane[] {
  const reached = offsetRegions(reachable, swathM / 2 + ROOM_M);
  const necks = subtractRegions([region], reached);
  return necks.flatMap((neck) => {
    if (regionAreaM2(neck) < SMALLEST_PART * swathM * swathM) return [];
    const [rad] = laneHeadings([neck], swathM, 1);
    if (rad === undefined) return [];
    const lanes = lanesAcross([neck], rad, swathM);
    const lane = lanes[0];
    if (lane === undefined || lanes.length > 1) return [];
    const swath = bufferLine(lane, swathM / 2, 'flat');
    const swathM2 = regionsAreaM2(swath);
    const insideM2 = regionsAreaM2(intersectRegions(swath, [region]));
    const newM2 = regionsAreaM2(intersectRegions(swath, [neck]));
    return insideM2 >= NARROWEST_PART * swathM2 && newM2 >= 0.5 * swathM2 ? [lane] : [];
  });
}
