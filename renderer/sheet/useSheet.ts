import { useMemo } from 'react';
import type { Result } from '../../core/result.ts';
import { layoutSheet, type SheetPage } from '../../core/sheet/index.ts';
import type { JobPlan } from '../../core/plan/index.ts';
import type { Yard } from '../../core/yard.ts';
import { isoDate } from '../shared/isoDate.ts';
import { jobInHand } from '../shared/jobInHand.ts';

export type Paper = 'letter' | 'a4';

/** How the sheet is to be printed. `scale` 'auto' = the largest drafting scale that fits, else n of 1:n. */
export interface SheetWish {
  readonly paper: Paper;
  readonly scale: 'auto' | number;
}

/** The printed pages of a plan; null while there is no plan. */
export function useSheet(
  yard: Yard | null,
  plan: JobPlan | null,
  wish: SheetWish,
): Result<readonly SheetPage[]> | null {
  return useMemo(() => {
    const job = yard ? jobInHand(yard) : undefined;
    if (yard === null || plan === null || !job) return null;
    return layoutSheet({
      yard,
      plan,
      job,
      paper: wish.paper,
      scale: wish.scale,
      madeOn: isoDate(new Date()),
    });
  }, [yard, plan, wish]);
}
