import type { LoadMix } from '../applicators/index.ts';
import { type AreaSpread, sigmaOf, sigmaOfSum, timesSpread } from '../area/index.ts';
import type { JobPlan } from '../plan/index.ts';
import type { Section } from '../sections/index.ts';
import {
  apportionForDisplay,
  areaStepM2,
  carrierUnitFor,
  otherUnits,
  sum,
  type ShownVolumeUnit,
  volumeStepL,
  volumeUnitFor,
} from '../units/index.ts';
import type { UnitSystem } from '../yard.ts';
import { type PrintedSum, type PrintedZone, printedSum, printedZones } from '../zones/index.ts';

/** One zone's areas as printed, and its treated ground rounded in the other unit system, where it adds up too. */
export interface ZoneFigures extends PrintedZone {
  readonly otherTreatedM2: number;
  /** One standard deviation of its product for the area's sake alone; null = not stated. */
  readonly productSigmaL: number | null;
}

/** What of a load goes on one section; small sections may share one. */
export interface LoadFigures {
  readonly load: number;
  readonly section: Section;
  readonly areaM2: number;
  readonly areaSigmaM2: number | null;
  readonly otherAreaM2: number;
  /** What the load is mixed for: `areaM2`, or its sloping surface where the yard says so. */
  readonly mixedM2: number;
  readonly productL: number;
  readonly productSigmaL: number | null;
  readonly carrierL: number;
  readonly dialRatio: number | null;
}

/** One fill of the applicator, the sum of what goes on its sections as printed. */
export interface FillFigures {
  readonly number: number;
  readonly parts: readonly LoadFigures[];
  readonly mixedM2: number;
  readonly productL: number;
  readonly productSigmaL: number | null;
  readonly carrierL: number;
  readonly dialRatio: number | null;
}

/** Every figure the sheet prints more than once or sums, already rounded so that the paper adds up. */
export interface SheetFigures {
  readonly zones: readonly ZoneFigures[];
  readonly zoneSum: PrintedSum & Pick<ZoneFigures, 'otherTreatedM2' | 'productSigmaL'>;
  /** Whether amounts are worked out from a surface that is not the map's area. */
  readonly isMixedBySurface: boolean;
  /** Section for section, in walking order. */
  readonly loads: readonly LoadFigures[];
  /** Load for load, in walking order. */
  readonly fills: readonly FillFigures[];
  readonly productUnit: ShownVolumeUnit;
  readonly carrierUnit: ShownVolumeUnit;
  readonly productTotalL: number;
  readonly carrierTotalL: number;
}

/** Rounds a plan's figures once, in the given units, for every page alike. */
export function sheetFigures(plan: JobPlan, units: UnitSystem): SheetFigures {
  const zones = zoneFigures(plan, units);
  const areas = sectionAreas(plan, zones, units, (zone) => zone.treatedM2);
  const otherAreas = sectionAreas(plan, zones, otherUnits(units), (zone) => zone.otherTreatedM2);
  const mixedAreas = sectionAreas(plan, zones, units, (zone) => zone.amountsM2);
  const largestL = plan.mixes.reduce((most, mix) => Math.max(most, mix.productL), 0);
  const productUnit = volumeUnitFor(largestL, units);
  const carrierUnit = carrierUnitFor(units);
  const products = shareOut(
    plan.mixes.map((mix) => mix.productL),
    volumeStepL(productUnit),
  );
  const carriers = shareOut(
    plan.mixes.map((mix) => mix.carrierL),
    volumeStepL(carrierUnit),
  );
  const sections = new Map(plan.ground.sections.map((section) => [section.id, section]));
  const loadNumbers = new Map(
    plan.ground.loads.flatMap(({ number, sectionIds }) => sectionIds.map((id) => [id, number] as const)),
  );
  const loads = plan.mixes.flatMap((mix: LoadMix, i) => {
    const section = sections.get(mix.sectionId);
    if (section === undefined) return [];
    const areaM2 = areas.get(section.id) ?? mix.areaM2;
    const otherAreaM2 = otherAreas.get(section.id) ?? mix.areaM2;
    const mixedM2 = mixedAreas.get(section.id) ?? mix.areaM2;
    const [productL, carrierL] = [products[i] as number, carriers[i] as number];
    const areaSigmaM2 = plan.sectionSigmas.get(section.id) ?? null;
    // Product is a rate times an area, so it is off by as much of itself.
    const productSigmaL = areaSigmaM2 === null ? null : (mix.productL / section.areaM2) * areaSigmaM2;
    const { dialRatio } = mix;
    const own = {
      load: loadNumbers.get(section.id) ?? i + 1,
      section,
      areaM2,
      areaSigmaM2,
      otherAreaM2,
      mixedM2,
    };
    return [{ ...own, productL, productSigmaL, carrierL, dialRatio }];
  });
  return {
    zones,
    zoneSum: {
      ...printedSum(zones),
      otherTreatedM2: sum(zones.map((zone) => zone.otherTreatedM2)),
      productSigmaL: sigmaOfSum(zones.map((zone) => productSpread(plan, zone))),
    },
    isMixedBySurface: plan.ground.resolved.zones.some((zone) => zone.amountFactor !== 1),
    loads,
    fills: fillsOf(plan, loads),
    productUnit,
    carrierUnit,
    productTotalL: sum(products),
    carrierTotalL: sum(carriers),
  };
}

/** Sections with the same load put together. */
function fillsOf(plan: JobPlan, loads: readonly LoadFigures[]): FillFigures[] {
  const numbers = [...new Set(loads.map(({ load }) => load))];
  return numbers.map((number): FillFigures => {
    const parts = loads.filter(({ load }) => load === number);
    const own = plan.mixes.filter(({ sectionId }) => parts.some(({ section }) => section.id === sectionId));
    const exactM2 = sum(own.map(({ areaM2 }) => areaM2));
    const sigmaM2 = plan.loadSigmas.get(number) ?? null;
    return {
      number,
      parts,
      mixedM2: sum(parts.map(({ mixedM2 }) => mixedM2)),
      productL: sum(parts.map(({ productL }) => productL)),
      // Product is a rate times an area, so it is off by as much of itself.
      productSigmaL: sigmaM2 === null ? null : (sum(own.map(({ productL }) => productL)) / exactM2) * sigmaM2,
      carrierL: sum(parts.map(({ carrierL }) => carrierL)),
      dialRatio: parts[0]?.dialRatio ?? null,
    };
  });
}

/** The zones this plan treats; rounded among all zones of the yard, as on the screen. */
function zoneFigures(plan: JobPlan, units: UnitSystem): ZoneFigures[] {
  const { resolved, sections } = plan.ground;
  const treatedIds = new Set(sections.map((section) => section.zoneId));
  const others = printedZones(resolved, otherUnits(units));
  return printedZones(resolved, units)
    .map((zone, i) => ({
      ...zone,
      otherTreatedM2: others[i]?.treatedM2 ?? zone.treatedM2,
      productSigmaL: sigmaOf(productSpread(plan, zone)),
    }))
    .filter((zone) => treatedIds.has(zone.zoneId));
}

/** What a zone's product is off by for its area's sake: litres where an area's spread has square metres. */
function productSpread({ ground, mixes }: JobPlan, { zoneId, spread }: PrintedZone): AreaSpread {
  const own = ground.sections.filter((section) => section.zoneId === zoneId);
  const ids = new Set(own.map(({ id }) => id));
  const productL = sum(mixes.filter(({ sectionId }) => ids.has(sectionId)).map((mix) => mix.productL));
  const areaM2 = sum(own.map((section) => section.areaM2));
  return timesSpread(spread, areaM2 > 0 ? productL / areaM2 : 0);
}

/** Section areas that add up to their zone's printed treated area. */
function sectionAreas(
  plan: JobPlan,
  zones: readonly ZoneFigures[],
  units: UnitSystem,
  treatedOf: (zone: ZoneFigures) => number,
): Map<string, number> {
  const areas = new Map<string, number>();
  for (const zone of zones) {
    const sections = plan.ground.sections.filter((section) => section.zoneId === zone.zoneId);
    const exactM2 = sum(sections.map((section) => section.areaM2));
    // Scaled onto the zone's printed figure, which may be one step off this zone's own rounding.
    const scaled = sections.map((section) => (section.areaM2 * treatedOf(zone)) / exactM2);
    shareOut(scaled, areaStepM2(units)).forEach((areaM2, i) => {
      areas.set((sections[i] as Section).id, areaM2);
    });
  }
  return areas;
}

/** Apportioned against their own exact sum. */
function shareOut(values: readonly number[], step: number): number[] {
  return apportionForDisplay(values, step, sum(values));
}
