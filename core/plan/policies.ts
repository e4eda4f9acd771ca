import { distanceM } from '../kernel/index.ts';
import { ok, type Result } from '../result.ts';
import { flagPlaces } from '../staking/index.ts';
import { sum } from '../units/index.ts';
import type { SectionPolicy, Yard } from '../yard.ts';
import { cutZones } from './cutZones.ts';
import { jobGround } from './jobGround.ts';
import { packLoads } from './packLoads.ts';

/** What it comes to when a job's loads are shared out one way. Areas in the terms amounts are worked out in. */
export interface PolicyFigures {
  readonly policy: SectionPolicy;
  readonly loads: number;
  readonly sections: number;
  readonly smallestLoadM2: number;
  readonly largestLoadM2: number;
  /** What the smallest load, mixed full, would leave. */
  readonly unusedM2: number;
  /** Of all cut lines together. */
  readonly cutLengthM: number;
  readonly flags: number;
}

/**
 * Both ways to share out a job's loads, with what each comes to, so that the person can choose. Sections alone: no
 * passes are laid.
 *
 * @param jobId of a job of this yard; its held cuts stand under both
 * @returns 'even' and then 'fewest'
 * Problems: those of jobGround and cutZones
 */
export function comparePolicies(
  yard: Yard,
  jobId: string,
  isCancelled: () => boolean = () => false,
): Result<readonly [PolicyFigures, PolicyFigures]> {
  const whole = jobGround(yard, jobId);
  if (!whole.ok) return whole;
  const { resolved, request } = whole.value;
  const figuresOf = (policy: SectionPolicy): Result<PolicyFigures> => {
    const asked = { ...request, policy };
    const cut = cutZones(resolved, asked, isCancelled, () => undefined);
    if (!cut.ok) return cut;
    const { sections, cuts, cutLines } = cut.value;
    const loads = packLoads(cut.value, resolved.zones, asked).map(({ areaM2 }) => areaM2);
    const smallestLoadM2 = Math.min(...loads);
    return ok({
      policy,
      loads: loads.length,
      sections: sections.length,
      smallestLoadM2,
      largestLoadM2: Math.max(...loads),
      unusedM2: Math.max(0, request.loadAreaM2 - smallestLoadM2),
      cutLengthM: sum(cutLines.map(({ from, to }) => distanceM(from, to))),
      flags: flagPlaces(cuts, cutLines).length,
    });
  };
  const even = figuresOf('even');
  if (!even.ok) return even;
  const fewest = figuresOf('fewest');
  return fewest.ok ? ok([even.value, fewest.value]) : fewest;
}
