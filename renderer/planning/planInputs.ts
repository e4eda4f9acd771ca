import type { Yard } from '../../core/yard.ts';

/** Everything of a yard that a plan is made from: a change to anything else must not start a new one. */
export type PlanInputs = readonly unknown[];

/** The parts of the yard by identity, and the figures of it by value. */
export function planInputsOf(yard: Yard, jobId: string): PlanInputs {
  const { details, outlines, pictures, elevations, marks, products, applicators, jobs } = yard;
  return [
    outlines,
    pictures,
    elevations,
    marks,
    products,
    applicators,
    jobs,
    // Cuts end on the marks of the person's own tape.
    details.unitSystem,
    details.cornerSigmaM,
    details.overlapRule,
    details.amountsBy,
    jobId,
  ];
}

export function sameInputs(one: PlanInputs | null, other: PlanInputs): boolean {
  return one !== null && other.every((part, i) => part === one[i]);
}
