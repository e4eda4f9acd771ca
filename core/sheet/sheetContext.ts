import type { JobPlan } from '../plan/index.ts';
import type { Staking } from '../staking/index.ts';
import type { Applicator, Job, Product, UnitSystem, Yard } from '../yard.ts';
import type { PaperPlan, Paper } from './paper.ts';
import type { PageMark } from './page.ts';
import type { SheetFigures } from './sheetFigures.ts';

/** All a page of the sheet is drawn from. */
export interface SheetContext {
  readonly yard: Yard;
  readonly plan: JobPlan;
  readonly job: Job;
  readonly product: Product;
  readonly applicator: Applicator;
  readonly figures: SheetFigures;
  /** How the ends of the cut lines are set. */
  readonly staking: Staking;
  /** false = a plan that is only walked: the columns of product and carrier would hold nothing but zeros. */
  readonly isPoured: boolean;
  readonly units: UnitSystem;
  readonly paper: Paper;
  readonly scale: 'auto' | number;
  readonly pictureOpacity: number;
}

/** A page without its header and title block, which need to know how many pages there are. */
export interface DraftPage {
  readonly paper: PaperPlan;
  readonly title: string;
  readonly subtitle: string;
  /** Scale in words; '' on a page without a map. */
  readonly scaleWords: string;
  readonly marks: readonly PageMark[];
}
