import type { JobPlan } from '../plan/index.ts';
import { cautionsFor } from '../products/index.ts';
import type { Result } from '../result.ts';
import { ok, trouble } from '../result.ts';
import { stakeCuts } from '../staking/index.ts';
import { formatDay } from '../units/index.ts';
import type { Job, Yard } from '../yard.ts';
import { mixPages } from './mixPages.ts';
import { notesPages } from './notesPage.ts';
import { overviewPage } from './overviewPage.ts';
import type { Paper } from './paper.ts';
import type { SheetPage } from './page.ts';
import { schedulePages } from './schedulePages.ts';
import { sectionPages } from './sectionPages.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';
import { sheetFigures } from './sheetFigures.ts';
import { stakingPages } from './stakingPages.ts';
import { drawHeader, drawTitleBlock } from './titleBlock.ts';

export interface SheetInput {
  readonly yard: Yard;
  readonly plan: JobPlan;
  readonly job: Job;
  readonly paper: Paper;
  /** 1:n for the overview, or the largest drafting scale that fits. */
  readonly scale: 'auto' | number;
  /** ISO date of the printing: an argument, so that the same plan makes the same pages. */
  readonly madeOn: string;
  /** From 0 (left out, the default) to 1: how strongly base pictures show on the overview. */
  readonly pictureOpacity?: number;
}

/**
 * The printed sheet of one job: overview, flags, a page for each section, areas, mix, notes. Pages are drawing steps
 * in millimetres; turning them into PDF bytes or SVG text is somebody else's work.
 *
 * @returns pages in printing order, all of the asked paper, map pages turned where the yard is wider than tall
 * Problems: value/scale-does-not-fit (with the largest that does), value/missing when the job names a product or
 * applicator the yard does not have, plan/nothing-to-treat, shape/too-large
 * Accuracy: 1 m of ground is exactly 1000 / scale mm of paper; printed loads, sections and zones add up to the
 * last digit (tests/core/sheet/addsUp.test.ts)
 */
export function layoutSheet(input: SheetInput): Result<SheetPage[]> {
  const { yard, plan, job } = input;
  const product = yard.products.find((entry) => entry.id === job.productId);
  const applicator = yard.applicators.find((entry) => entry.id === job.applicatorId);
  if (product === undefined)
    return trouble({ kind: 'value/missing', where: { field: 'product' }, facts: {} });
  if (applicator === undefined)
    return trouble({ kind: 'value/missing', where: { field: 'applicator' }, facts: {} });
  if (plan.ground.sections.length === 0) {
    return trouble({ kind: 'plan/nothing-to-treat', where: { thing: job.name }, facts: {} });
  }
  const units = yard.details.unitSystem;
  const context: SheetContext = {
    yard,
    plan,
    job,
    product,
    applicator,
    units,
    figures: sheetFigures(plan, units),
    staking: stakeCuts(yard, plan.ground, units),
    isPoured: plan.productTotalL + plan.carrierTotalL > 0,
    paper: input.paper,
    scale: input.scale,
    pictureOpacity: input.pictureOpacity ?? 0,
  };
  const overview = overviewPage(context);
  if (!overview.ok) return overview;
  const drafts = [
    overview.value,
    ...stakingPages(context),
    ...sectionPages(context),
    ...schedulePages(context),
    // A plan made without a product has nothing to mix.
    ...(context.isPoured ? mixPages(context) : []),
    ...notesPages(context, cautionsFor(product, applicator, yard)),
  ];
  return ok(drafts.map((draft, i) => finishPage(context, draft, i + 1, drafts.length, input.madeOn)));
}

function finishPage(
  { yard, job }: SheetContext,
  draft: DraftPage,
  page: number,
  pages: number,
  madeOn: string,
): SheetPage {
  const { paper } = draft;
  const ground = `ground of ${formatDay(yard.details.groundDate)}`;
  return {
    widthMm: paper.widthMm,
    heightMm: paper.heightMm,
    marks: [
      ...drawHeader(paper.header, {
        title: draft.title,
        subtitle: draft.subtitle,
        right: [yard.details.name, ground],
      }),
      ...draft.marks,
      ...drawTitleBlock(paper.titleBlock, [
        { label: 'yard', entry: yard.details.name, share: 2.6 },
        { label: 'job', entry: job.name, share: 2.4 },
        { label: 'made on', entry: formatDay(madeOn), share: 1.6 },
        { label: 'ground of', entry: formatDay(yard.details.groundDate), share: 1.6 },
        { label: 'scale', entry: draft.scaleWords === '' ? '–' : draft.scaleWords, share: 1.9 },
        { label: 'page', entry: `${page} of ${pages}`, share: 0.9 },
      ]),
    ],
  };
}
