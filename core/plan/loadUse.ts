import { sum } from '../units/index.ts';
import type { GroundPlan } from './plan.ts';

/** How far a load reaches over the ground its passes sweep. */
export interface LoadUse {
  readonly number: number;
  /** Map area the load is mixed for. */
  readonly mixedM2: number;
  /** Length of its passes times the swath; of two rounds at half the rate, half of it. */
  readonly sweptM2: number;
  /** Swept over mixed: above 1 the applicator runs empty before the last pass ends. */
  readonly ratio: number;
  /** The pace at which it lasts to the end of the last pass. */
  readonly lastingPaceMPerS: number;
}

/**
 * Load by load, what its passes sweep against what it is mixed for.
 *
 * An applicator lets out the same each second, and at pace v a mix for area A lasts A / (v w) with swath w. Passes of
 * length L take L / v', so the load lasts when v' = v L w / A = v × swept / mixed. More product is no way out of it:
 * the label governs what a load holds.
 *
 * Source: own derivation
 */
export function loadUses({
  loads,
  coverage,
  request,
}: Pick<GroundPlan, 'loads' | 'coverage' | 'request'>): LoadUse[] {
  return loads.map(({ number, sectionIds }): LoadUse => {
    const own = coverage.sections.filter(({ sectionId }) => sectionIds.includes(sectionId));
    const mixedM2 = sum(own.map(({ treatedM2 }) => treatedM2));
    const sweptM2 = sum(own.map((section) => section.sweptM2)) / request.rounds;
    const ratio = sweptM2 / mixedM2;
    return { number, mixedM2, sweptM2, ratio, lastingPaceMPerS: request.paceMPerS * ratio };
  });
}
