import type { LoadMix } from '../applicators/index.ts';
import type { JobPlan } from '../plan/index.ts';
import type { Section } from '../sections/index.ts';
import {
  apportionForDisplay,
  carrierUnitFor,
  SQUARE_FOOT_M2,
  type ShownVolumeUnit,
  volumeStepL,
  volumeUnitFor,
} from '../units/index.ts';
import type { UnitSystem } from '../yard.ts';

/** One zone's areas as printed: treated + left out = turf, turf + cut-outs + owned by other = gross. */
export interface ZoneFigures {
  readonly zoneId: string;
  readonly name: string;
  readonly treatedM2: number;
  /** The same ground rounded in the other unit system, where it has to add up too. */
  readonly otherTreatedM2: number;
  readonly leftOutM2: number;
  readonly turfM2: number;
  readonly cutOutM2: number;
  readonly ownedByOtherM2: number;
  readonly grossM2: number;
  readonly sigmaM2: number | null;
}

export interface LoadFigures {
  readonly load: number;
  readonly section: Section;
  readonly areaM2: number;
  readonly otherAreaM2: number;
  readonly productL: number;
  readonly carrierL: number;
  readonly dialRatio: number | null;
}

/** Every figure the sheet prints more than once or sums, already rounded so that the paper adds up. */
export interface SheetFigures {
  readonly zones: readonly ZoneFigures[];
  readonly zoneSum: Omit<ZoneFigures, 'zoneId' | 'name'>;
  readonly loads: readonly LoadFigures[];
  readonly productUnit: ShownVolumeUnit;
  readonly carrierUnit: ShownVolumeUnit;
  readonly productTotalL: number;
  readonly carrierTotalL: number;
}

export function areaStepM2(units: UnitSystem): number {
  return units === 'us' ? SQUARE_FOOT_M2 : 0.1;
}

/** The system the yard is not kept in; the sheet shows both. */
export function otherUnits(units: UnitSystem): UnitSystem {
  return units === 'us' ? 'metric' : 'us';
}

/** Rounds a plan's figures once, in the given units, for every page alike. */
export function sheetFigures(plan: JobPlan, units: UnitSystem): SheetFigures {
  const zones = zoneFigures(plan, units);
  const areas = sectionAreas(plan, zones, units, (zone) => zone.treatedM2);
  const otherAreas = sectionAreas(plan, zones, otherUnits(units), (zone) => zone.otherTreatedM2);
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
  const loads = plan.mixes.flatMap((mix: LoadMix, i) => {
    const section = sections.get(mix.sectionId);
    if (section === undefined) return [];
    const areaM2 = areas.get(section.id) ?? mix.areaM2;
    const otherAreaM2 = otherAreas.get(section.id) ?? mix.areaM2;
    const [productL, carrierL] = [products[i] as number, carriers[i] as number];
    return [{ load: i + 1, section, areaM2, otherAreaM2, productL, carrierL, dialRatio: mix.dialRatio }];
  });
  return {
    zones,
    zoneSum: sumZones(zones),
    loads,
    productUnit,
    carrierUnit,
    productTotalL: sum(products),
    carrierTotalL: sum(carriers),
  };
}

function zoneFigures(plan: JobPlan, units: UnitSystem): ZoneFigures[] {
  const step = areaStepM2(units);
  const treatedIds = new Set(plan.ground.sections.map((section) => section.zoneId));
  const zones = plan.ground.resolved.zones.filter((zone) => treatedIds.has(zone.zoneId));
  const otherTreated = shareOut(
    zones.map((zone) => zone.treatedAreaM2),
    areaStepM2(otherUnits(units)),
  );
  const treated = shareOut(
    zones.map((zone) => zone.treatedAreaM2),
    step,
  );
  const leftOut = shareOut(
    zones.map((zone) => Math.max(0, zone.turfAreaM2 - zone.treatedAreaM2)),
    step,
  );
  const cutOut = shareOut(
    zones.map((zone) => zone.cutOutAreaM2),
    step,
  );
  const owned = shareOut(
    zones.map((zone) => zone.ownedByOtherAreaM2),
    step,
  );
  return zones.map((zone, i) => {
    const treatedM2 = treated[i] as number;
    const otherTreatedM2 = otherTreated[i] as number;
    const leftOutM2 = leftOut[i] as number;
    const cutOutM2 = cutOut[i] as number;
    const ownedByOtherM2 = owned[i] as number;
    const turfM2 = treatedM2 + leftOutM2;
    const grossM2 = turfM2 + cutOutM2 + ownedByOtherM2;
    const { zoneId, name, sigmaM2 } = zone;
    return {
      zoneId,
      name,
      treatedM2,
      otherTreatedM2,
      leftOutM2,
      turfM2,
      cutOutM2,
      ownedByOtherM2,
      grossM2,
      sigmaM2,
    };
  });
}

function sumZones(zones: readonly ZoneFigures[]): Omit<ZoneFigures, 'zoneId' | 'name'> {
  const sigmas = zones.map((zone) => zone.sigmaM2);
  const stated = sigmas.filter((sigma) => sigma !== null);
  return {
    treatedM2: sum(zones.map((zone) => zone.treatedM2)),
    otherTreatedM2: sum(zones.map((zone) => zone.otherTreatedM2)),
    leftOutM2: sum(zones.map((zone) => zone.leftOutM2)),
    turfM2: sum(zones.map((zone) => zone.turfM2)),
    cutOutM2: sum(zones.map((zone) => zone.cutOutM2)),
    ownedByOtherM2: sum(zones.map((zone) => zone.ownedByOtherM2)),
    grossM2: sum(zones.map((zone) => zone.grossM2)),
    // Zones are traced one by one, so their errors are taken as independent: variances add.
    sigmaM2: stated.length < sigmas.length ? null : Math.hypot(...stated),
  };
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

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
