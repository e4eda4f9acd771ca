import { loadsFor } from '../applicators/index.ts';
import { sum } from '../units/index.ts';
import type { GroundPlan } from './plan.ts';

/** No plan of this ground has fewer loads than all of it fills, wherever it is cut. */
export function leastLoads({ resolved, request }: Pick<GroundPlan, 'request' | 'resolved'>): number {
  const areaM2 = sum(resolved.zones.map((zone) => zone.treatedAreaM2 * zone.amountFactor));
  return loadsFor(areaM2, request.loadAreaM2);
}
