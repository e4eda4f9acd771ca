import { OVERLAP_RULES } from '../../../../core/yard.ts';
import type { BroughtDetails } from '../brought.ts';
import { isMembers } from './FeatureReader.ts';

/**
 * The foreign member `yard` that Platpace writes beside the features, so that a yard keeps its name, frame and
 * corner sigma on the way through GeoJSON. Null when it is missing or any of it is not as we write it.
 */
export function yardMemberOf(root: Readonly<Record<string, unknown>>): BroughtDetails | null {
  const said = root.yard;
  if (!isMembers(said)) return null;
  const { name, groundDate, unitSystem, cornerSigmaM, originLonDeg, originLatDeg } = said;
  // Files from before it was written have none.
  const amountsBy = said.amountsBy ?? 'plan';
  const overlapRule = OVERLAP_RULES.find((rule) => rule === (said.overlapRule ?? 'drawn-first'));
  const isWhole =
    typeof name === 'string' &&
    typeof groundDate === 'string' &&
    /^\d{4}-\d{2}-\d{2}$/.test(groundDate) &&
    (unitSystem === 'us' || unitSystem === 'metric') &&
    (cornerSigmaM === null || isWithin(cornerSigmaM, 0, 100)) &&
    (amountsBy === 'plan' || amountsBy === 'surface') &&
    overlapRule !== undefined &&
    isWithin(originLonDeg, -180, 180) &&
    isWithin(originLatDeg, -84, 84);
  if (!isWhole) return null;
  const origin = { lonDeg: originLonDeg, latDeg: originLatDeg };
  return { name: name.slice(0, 120), groundDate, unitSystem, cornerSigmaM, amountsBy, overlapRule, origin };
}

function isWithin(value: unknown, least: number, most: number): value is number {
  return typeof value === 'number' && value >= least && value <= most;
}
