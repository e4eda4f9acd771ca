import type { JobPlan } from '../plan/index.ts';
import { apportionForDisplay, areaStepM2 } from '../units/index.ts';
import type { UnitSystem } from '../yard.ts';

/** Ground, and its share of all treated ground; a share of one. */
export interface CoveredGround {
  readonly areaM2: number;
  readonly share: number;
}

/** How the swaths cover the ground, as shown: once + twice + missed are the treated ground and the whole share. */
export interface CoverageFigures {
  readonly once: CoveredGround;
  readonly twice: CoveredGround;
  readonly missed: CoveredGround;
  readonly outside: CoveredGround;
}

/** The last digit a share is shown to: a tenth of a percent. */
const SHARE_STEP = 0.001;

/**
 * Coverage rounded once, for screen and paper alike.
 *
 * @param treatedM2 the treated ground as shown, which the parts then add up to
 */
export function coverageFigures({ ground }: JobPlan, treatedM2: number, units: UnitSystem): CoverageFigures {
  const { onceM2, twiceM2, missedM2, outsideM2 } = ground.coverage;
  const parts = [onceM2, twiceM2, missedM2].map((areaM2) => areaM2 / (onceM2 + twiceM2 + missedM2));
  // Scaled from the overlay's grid onto the shown total: the two differ by less than the last digit.
  const areas = apportionForDisplay(
    parts.map((part) => part * treatedM2),
    areaStepM2(units),
    treatedM2,
  );
  const shares = apportionForDisplay(parts, SHARE_STEP, 1);
  const [once, twice, missed] = areas.map((areaM2, i) => ({ areaM2, share: shares[i] as number })) as [
    CoveredGround,
    CoveredGround,
    CoveredGround,
  ];
  return { once, twice, missed, outside: { areaM2: outsideM2, share: outsideM2 / treatedM2 } };
}
