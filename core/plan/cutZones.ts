import { bearingDegOf, laneHeadings } from '../passes/index.ts';
import { ok, type Result, trouble } from '../result.ts';
import { type Cut, type CutLine, planSections, type Section } from '../sections/index.ts';
import { sum } from '../units/index.ts';
import type { ResolvedYard, ResolvedZone } from '../zones/index.ts';
import { cancelled } from './cancelled.ts';
import { headingDegOf } from './headingDegOf.ts';
import type { PlanRequest } from './plan.ts';
import { zoneLetter } from './zoneLetter.ts';

/** All zones cut into sections; a cut line's `cut` is its place among the cuts of all. */
export interface CutGround {
  readonly sections: readonly Section[];
  readonly cuts: readonly Cut[];
  readonly cutLines: readonly CutLine[];
}

/**
 * Cuts zone after zone into sections of at most one load.
 *
 * @param onProgress told the part done, from 0 to 1
 * Problems: those of planSections
 */
export function cutZones(
  resolved: ResolvedYard,
  { loadAreaM2, policy, swathM, heading, markM, tapeSides }: PlanRequest,
  isCancelled: () => boolean,
  onProgress: (fraction: number) => void,
): Result<CutGround> {
  const sections: Section[] = [];
  const cuts: Cut[] = [];
  const cutLines: CutLine[] = [];
  const wholeM2 = sum(resolved.zones.map((zone) => zone.treatedAreaM2));
  let doneM2 = 0;
  for (const [place, zone] of resolved.zones.entries()) {
    if (isCancelled()) return trouble(cancelled(resolved));
    if (zone.treated.length === 0) continue;
    const ground = {
      zoneId: zone.zoneId,
      zoneName: zone.name,
      letter: zoneLetter(place),
      treated: zone.treated,
    };
    const cut = planSections(ground, {
      // A load covers its area of sloping ground where amounts are by the surface, and that is less of the map.
      loadAreaM2: loadAreaM2 / zone.amountFactor,
      policy,
      headingDeg: headingDegOf(heading) ?? bestHeadingDeg(zone, swathM),
      swathM,
      markM,
      tapeSides,
      isCancelled,
    });
    if (!cut.ok) return cut;
    const before = cuts.length;
    sections.push(...cut.value.sections);
    cutLines.push(...cut.value.cutLines.map((line) => ({ ...line, cut: line.cut + before })));
    cuts.push(...cut.value.cuts);
    doneM2 += zone.treatedAreaM2;
    onProgress(Math.min(1, doneM2 / wholeM2));
  }
  return ok({ sections, cuts, cutLines });
}

function bestHeadingDeg(zone: ResolvedZone, swathM: number): number | null {
  const [rad] = laneHeadings(zone.treated, swathM, 1);
  return rad === undefined ? null : bearingDegOf(rad);
}
