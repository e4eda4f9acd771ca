import type { SheetContext } from '../../core/sheet/sheetContext.ts';
import { sheetFigures } from '../../core/sheet/sheetFigures.ts';
import type { JobPlan } from '../../core/plan/index.ts';
import { stakeCuts } from '../../core/staking/index.ts';
import type { Applicator, Job, Product } from '../../core/yard.ts';
import { type HandMadeGround, handMadePlan } from './handMadePlan.ts';

/** The same plan with every zone's surface larger by a factor, and amounts worked out from it. */
export function onASlope(plan: JobPlan, factor: number): JobPlan {
  const grade = Math.sqrt(factor ** 2 - 1);
  const zones = plan.ground.resolved.zones.map((zone) => ({
    ...zone,
    surfaceFactor: factor,
    amountFactor: factor,
    slope: {
      planM2: zone.treatedAreaM2,
      surfaceM2: zone.treatedAreaM2 * factor,
      coveredM2: zone.treatedAreaM2,
      steepM2: 0,
      steepestGrade: grade,
      meanGrade: grade,
    },
  }));
  return { ...plan, ground: { ...plan.ground, resolved: { ...plan.ground.resolved, zones } } };
}

/** The same plan with two sections done from one load, the earlier one's; the later loads move up. */
export function inOneLoad(plan: JobPlan, first: string, second: string): JobPlan {
  const loads = plan.ground.loads
    .filter(({ sectionIds }) => !sectionIds.includes(second))
    .map((load, place) => {
      const sectionIds = load.sectionIds.includes(first) ? [...load.sectionIds, second] : load.sectionIds;
      return { ...load, number: place + 1, sectionIds };
    });
  const sigmas = plan.sectionSigmas;
  const loadSigmas = new Map(
    loads.map(({ number, sectionIds }) => {
      // Sections of two zones: their errors are their own, so variances add.
      const own = sectionIds.map((id) => sigmas.get(id) ?? Number.NaN);
      return [number, Math.hypot(...own)] as const;
    }),
  );
  return { ...plan, ground: { ...plan.ground, loads }, loadSigmas };
}

/** What the pages of a hand-made plan's sheet are drawn from. */
export function contextOf(ground: HandMadeGround): SheetContext {
  const { yard, plan } = handMadePlan(ground);
  const units = yard.details.unitSystem;
  return {
    yard,
    plan,
    job: yard.jobs[0] as Job,
    product: yard.products[0] as Product,
    applicator: yard.applicators[0] as Applicator,
    figures: sheetFigures(plan, units),
    staking: stakeCuts(yard, plan.ground, units),
    isPoured: true,
    units,
    paper: 'a4',
    scale: 'auto',
    pictureOpacity: 0,
  };
}
