import { loadsFor } from '../applicators/index.ts';
import { interiorPoint } from '../kernel/index.ts';
import { bearingDegOf, laneHeadings } from '../passes/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import {
  type Cut,
  type CutLine,
  orderSections,
  planSections,
  type Section,
  type ZoneSections,
} from '../sections/index.ts';
import type { Region } from '../spaces.ts';
import { sum } from '../units/index.ts';
import type { HeldCut } from '../yard.ts';
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
  /** Ids of the sections in the order in which one load after the other was filled. */
  readonly filling: readonly string[];
  readonly warnings: readonly Problem[];
}

/**
 * Cuts zone after zone into sections of at most one load. Even policy: each zone by itself. Fewest: from zone to zone
 * beside it, each beginning with what the load begun before still holds, so that all take as few loads as their
 * ground together asks for. Both in the terms amounts are worked out in.
 *
 * @param onProgress told the part done, from 0 to 1
 * @returns sections in the order of the zones; a warning for each held cut that parts nothing
 * Problems: those of planSections
 */
export function cutZones(
  resolved: ResolvedYard,
  request: PlanRequest,
  isCancelled: () => boolean,
  onProgress: (fraction: number) => void,
): Result<CutGround> {
  const { loadAreaM2, policy, swathM, markM, tapeSides, heading } = request;
  const zones = resolved.zones.filter((zone) => zone.treated.length > 0);
  const wholeM2 = sum(zones.map(amountAreaM2));
  const loads = loadsFor(wholeM2, loadAreaM2);
  let begun = { roomM2: 0, spareM2: Math.max(0, loads * loadAreaM2 - wholeM2) };
  let doneM2 = 0;
  const cutZone = new Map<string, ZoneSections>();
  const filling: string[] = [];
  for (const zone of policy === 'even' ? zones : besideEachOther(zones)) {
    if (isCancelled()) return trouble(cancelled(resolved));
    const { zoneId, name: zoneName, treated, amountFactor } = zone;
    const letter = zoneLetter(resolved.zones.indexOf(zone));
    const cut = planSections(
      { zoneId, zoneName, letter, treated },
      {
        // A load covers its area of sloping ground where amounts are by the surface, and that is less of the map.
        loadAreaM2: loadAreaM2 / amountFactor,
        policy,
        headingDeg: headingDegOf(heading) ?? bestHeadingDeg(zone, swathM),
        swathM,
        markM,
        tapeSides,
        heldCuts: request.heldCuts.filter((held) => held.zoneId === zoneId),
        begun: { roomM2: begun.roomM2 / amountFactor, spareM2: begun.spareM2 / amountFactor },
        isCancelled,
      },
    );
    if (!cut.ok) return cut;
    cutZone.set(zoneId, cut.value);
    filling.push(...cut.value.filling);
    const { roomM2, spareM2 } = cut.value.begun;
    begun = { roomM2: roomM2 * amountFactor, spareM2: spareM2 * amountFactor };
    doneM2 += amountAreaM2(zone);
    onProgress(Math.min(1, doneM2 / wholeM2));
  }
  const warnings = idleWarnings(request.heldCuts, resolved, cutZone);
  return ok({ ...together(zones.flatMap(({ zoneId }) => cutZone.get(zoneId) ?? [])), filling, warnings });
}

function amountAreaM2({ treatedAreaM2, amountFactor }: ResolvedZone): number {
  return treatedAreaM2 * amountFactor;
}

function besideEachOther(zones: readonly ResolvedZone[]): ResolvedZone[] {
  const places = zones.map((zone) => interiorPoint(zone.treated[0] as Region));
  return orderSections(places).map((index) => zones[index] as ResolvedZone);
}

function bestHeadingDeg(zone: ResolvedZone, swathM: number): number | null {
  const [rad] = laneHeadings(zone.treated, swathM, 1);
  return rad === undefined ? null : bearingDegOf(rad);
}

function together(zones: readonly ZoneSections[]): Pick<CutGround, 'sections' | 'cuts' | 'cutLines'> {
  const sections: Section[] = [];
  const cuts: Cut[] = [];
  const cutLines: CutLine[] = [];
  for (const zone of zones) {
    sections.push(...zone.sections);
    cutLines.push(...zone.cutLines.map((line) => ({ ...line, cut: line.cut + cuts.length })));
    cuts.push(...zone.cuts);
  }
  return { sections, cuts, cutLines };
}

/** Held cuts that part nothing, each by its place among those of its zone. */
function idleWarnings(
  heldCuts: readonly HeldCut[],
  resolved: ResolvedYard,
  cutZone: ReadonlyMap<string, ZoneSections>,
): Problem[] {
  return heldCuts.flatMap((held): Problem[] => {
    const zone = resolved.zones.find(({ zoneId }) => zoneId === held.zoneId);
    const isIdle = cutZone.get(held.zoneId)?.idle.includes(held) ?? true;
    if (!isIdle) return [];
    const place = heldCuts.filter(({ zoneId }) => zoneId === held.zoneId).indexOf(held) + 1;
    const facts = { place, isZoneGone: zone === undefined };
    return [{ kind: 'plan/held-cut-parts-nothing', where: { thing: zone?.name ?? held.zoneId }, facts }];
  });
}
