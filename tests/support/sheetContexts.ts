import type { SheetContext } from '../../core/sheet/sheetContext.ts';
import { sheetFigures } from '../../core/sheet/sheetFigures.ts';
import type { Applicator, Job, Product } from '../../core/yard.ts';
import { type HandMadeGround, handMadePlan } from './handMadePlan.ts';

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
    isPoured: true,
    units,
    paper: 'a4',
    scale: 'auto',
    pictureOpacity: 0,
  };
}
