import type { Job, Yard } from '../../core/yard.ts';

/** The job the book is open at: the yard's newest. */
export function jobInHand(yard: Yard): Job | undefined {
  return yard.jobs.at(-1);
}
