import { sum } from '../units/index.ts';
import type { GroundPlan } from './plan.ts';

/** Ground over a load by less than this part of it is rounding. */
const LOAD_SLACK = 1e-9;

/** No plan of this ground has fewer loads than all of it fills, wherever it is cut. */
export function leastLoads({ resolved, request }: Pick<GroundPlan, 'request' | 'resolved'>): number {
  const areaM2 = sum(resolved.zones.map((zone) => zone.treatedAreaM2 * zone.amountFactor));
  return Math.max(1, Math.ceil(areaM2 / request.loadAreaM2 - LOAD_SLACK));
}
