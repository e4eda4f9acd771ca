import { sigmaOfSum } from '../../../core/area/index.ts';
import { problemText } from '../../../core/problemText.ts';
import type { GroundCoverage, OutsideKind } from '../../../core/passes/index.ts';
import { type GroundPlan, headingDegOf, type PlanRequest, sectionSigmas } from '../../../core/plan/index.ts';
import type { Yard, YardDetails } from '../../../core/yard.ts';
import type { ResolvedYard } from '../../../core/zones/index.ts';

/** The figures of a yard, and of a plan when there is one, in SI at full precision. */
export interface Summary {
  readonly yard: string;
  readonly groundDate: string;
  /** The origin of the yard frame (transverse Mercator on WGS84, scale 1); null for a loose yard. */
  readonly frameOrigin: { readonly lonDeg: number; readonly latDeg: number } | null;
  readonly units: Readonly<Record<string, string>>;
  /** Which area amounts and loads are worked out from; every other area here is the map's. */
  readonly amountsBy: YardDetails['amountsBy'];
  readonly zones: readonly ZoneSummary[];
  /** sigmaM2 counts an edge two zones share once, so it is not the root of the sum of squares. */
  readonly totals: Omit<ZoneSummary, 'name' | 'surfaceFactor'>;
  /** The zone that owns the ground they share first. */
  readonly overlaps: readonly { readonly between: readonly string[]; readonly areaM2: number }[];
  readonly warnings: readonly string[];
}

export interface ZoneSummary {
  readonly name: string;
  readonly grossAreaM2: number;
  readonly cutOutAreaM2: number;
  readonly ownedByOtherAreaM2: number;
  /** Zone less cut-outs and less ground owned by another zone. */
  readonly netAreaM2: number;
  /** Net less keep-off strips and check plots. */
  readonly treatedAreaM2: number;
  /** The treated ground as it slopes: treated area × surface factor. */
  readonly surfaceAreaM2: number;
  readonly surfaceFactor: number;
  readonly sigmaM2: number | null;
}

/** One fill of the applicator; its area is the one amounts are worked out from. */
export interface Fill {
  readonly load: number;
  readonly sections: readonly string[];
  readonly areaM2: number;
}

export interface PlanSummary extends Summary {
  readonly request: Readonly<Record<string, unknown>>;
  readonly sections: readonly Readonly<Record<string, unknown>>[];
  readonly loads: number;
  /** Load for load, in walking order. */
  readonly fills: readonly Fill[];
  /** `wetM` is what of the total goes over turf treated earlier. */
  readonly lengths: {
    readonly onM: number;
    readonly offM: number;
    readonly totalM: number;
    readonly wetM: number;
  };
  readonly timeS: number;
  readonly coverage: CoverageSummary;
}

const UNITS = { length: 'm', area: 'm²', time: 's', angle: 'deg', sigma: '1 standard deviation' };

export function summaryOf(yard: Yard, resolved: ResolvedYard): Summary {
  const { name, groundDate, frame, unitSystem } = yard.details;
  const nameOf = (id: string): string => yard.outlines.find((outline) => outline.id === id)?.name ?? id;
  const zones = resolved.zones.map((zone): ZoneSummary => {
    const { grossAreaM2, cutOutAreaM2, ownedByOtherAreaM2, turfAreaM2, treatedAreaM2, sigmaM2 } = zone;
    const netAreaM2 = turfAreaM2;
    return {
      name: zone.name,
      grossAreaM2,
      cutOutAreaM2,
      ownedByOtherAreaM2,
      netAreaM2,
      treatedAreaM2,
      surfaceAreaM2: treatedAreaM2 * zone.surfaceFactor,
      surfaceFactor: zone.surfaceFactor,
      sigmaM2,
    };
  });
  const total = (of: (zone: ZoneSummary) => number): number => zones.reduce((sum, zone) => sum + of(zone), 0);
  return {
    yard: name,
    groundDate,
    frameOrigin: frame.kind === 'placed' ? frame.origin : null,
    units: UNITS,
    amountsBy: yard.details.amountsBy,
    zones,
    totals: {
      grossAreaM2: total((zone) => zone.grossAreaM2),
      cutOutAreaM2: total((zone) => zone.cutOutAreaM2),
      ownedByOtherAreaM2: total((zone) => zone.ownedByOtherAreaM2),
      netAreaM2: total((zone) => zone.netAreaM2),
      treatedAreaM2: total((zone) => zone.treatedAreaM2),
      surfaceAreaM2: total((zone) => zone.surfaceAreaM2),
      sigmaM2: sigmaOfSum(resolved.zones.map(({ spread }) => spread)),
    },
    overlaps: resolved.overlaps.map(({ ownerId, otherId, areaM2 }) => ({
      between: [nameOf(ownerId), nameOf(otherId)],
      areaM2,
    })),
    warnings: resolved.warnings.map((warning) => problemText(warning, unitSystem).what),
  };
}

/** In percent of the treated ground of the section, or of all. */
export interface CoverageSummary {
  readonly oncePercent: number;
  /** Of two rounds at half the rate, covered by one only. */
  readonly shortPercent: number;
  readonly twicePercent: number;
  readonly coveredPercent: number;
  readonly missedPercent: number;
  readonly outsidePercent: number;
  /** By what lies there. */
  readonly outsideOntoPercent: Readonly<Record<OutsideKind, number>>;
}

function coverageSummaryOf(coverage: GroundCoverage): CoverageSummary {
  const { treatedM2, onceM2, shortM2, twiceM2, missedM2, outsideM2, outsideOntoM2 } = coverage;
  const percent = (areaM2: number): number => (treatedM2 > 0 ? (100 * areaM2) / treatedM2 : 0);
  const onto = Object.entries(outsideOntoM2).map(([kind, areaM2]) => [kind, percent(areaM2)]);
  return {
    oncePercent: percent(onceM2),
    shortPercent: percent(shortM2),
    twicePercent: percent(twiceM2),
    coveredPercent: percent(onceM2 + shortM2 + twiceM2),
    missedPercent: percent(missedM2),
    outsidePercent: percent(outsideM2),
    outsideOntoPercent: Object.fromEntries(onto) as Record<OutsideKind, number>,
  };
}

export function planSummaryOf(yard: Yard, plan: GroundPlan): PlanSummary {
  const { coverage, onLengthM, offLengthM, request } = plan;
  const summary = summaryOf(yard, plan.resolved);
  const sigmas = sectionSigmas(yard, plan);
  const planWarnings = plan.warnings.map((warning) => problemText(warning, yard.details.unitSystem).what);
  return {
    ...summary,
    warnings: [...new Set([...summary.warnings, ...planWarnings])],
    request: requestFigures(request),
    sections: plan.sections.map(({ id, zoneName, areaM2 }) => {
      const {
        sectionId: _,
        areaM2: __,
        ...figures
      } = plan.sectionFigures.find((each) => each.sectionId === id) ?? { sectionId: id, areaM2 };
      const own = coverage.sections.find(({ sectionId }) => sectionId === id);
      const load = plan.loads.find(({ sectionIds }) => sectionIds.includes(id))?.number ?? null;
      return {
        id,
        zone: zoneName,
        load,
        areaM2,
        sigmaM2: sigmas.get(id) ?? null,
        ...figures,
        coverage: own && coverageSummaryOf(own),
      };
    }),
    loads: plan.loads.length,
    fills: plan.loads.map(({ number, sectionIds, areaM2 }) => {
      return { load: number, sections: sectionIds, areaM2 };
    }),
    lengths: { onM: onLengthM, offM: offLengthM, totalM: onLengthM + offLengthM, wetM: plan.wetM },
    timeS: plan.timeS,
    coverage: coverageSummaryOf(coverage),
  };
}

/** What was asked for, in figures; of the hose its length, what it keeps from corners and its spigots by name. */
function requestFigures({
  hose,
  heading,
  tapeSides: _,
  ...asked
}: PlanRequest): Readonly<Record<string, unknown>> {
  const figures = hose && {
    lengthM: hose.lengthM,
    clearanceM: hose.clearanceM,
    spigots: hose.spigots.map(({ name }) => name),
  };
  return { ...asked, heading, headingDeg: headingDegOf(heading), hose: figures };
}
