import type { UnitSystem, Yard, YardFrame } from '../yard.ts';

/**
 * A yard with nothing drawn, which edits then fill.
 *
 * @param groundDate ISO date of the state of the ground, today for a new yard
 */
export function emptyYard(name: string, frame: YardFrame, unitSystem: UnitSystem, groundDate: string): Yard {
  return {
    details: {
      id: 'yard',
      name,
      groundDate,
      unitSystem,
      frame,
      cornerSigmaM: null,
      overlapRule: 'drawn-first',
      amountsBy: 'plan',
    },
    pictures: [],
    outlines: [],
    marks: [],
    elevations: [],
    checks: [],
    products: [],
    applicators: [],
    jobs: [],
  };
}
