import { type GroundCoverage, OUTSIDE_KINDS, type OutsideKind } from '../passes/index.ts';
import { apportionForDisplay, areaStepM2, sum } from '../units/index.ts';
import type { UnitSystem } from '../yard.ts';

/** Ground, and its share of all treated ground; a share of one. */
export interface CoveredGround {
  readonly areaM2: number;
  readonly share: number;
}

/** How the swaths cover ground, as shown: once + short + twice + missed are the treated ground and the whole share. */
export interface CoverageFigures {
  readonly once: CoveredGround;
  /** null where it is walked once: nothing can be short of its rate then. */
  readonly short: CoveredGround | null;
  readonly twice: CoveredGround;
  readonly missed: CoveredGround;
  readonly outside: CoveredGround;
  /** What the spray outside falls on, adding up to it; kinds of nothing shown are left out. */
  readonly outsideOnto: readonly { readonly kind: OutsideKind; readonly areaM2: number }[];
}

/** The last digit a share is shown to: a tenth of a percent. */
export const SHARE_STEP = 0.001;

/**
 * Coverage rounded once, for screen and paper alike.
 *
 * @param treatedM2 the treated ground as shown, which the parts then add up to
 */
export function coverageFigures(
  coverage: GroundCoverage,
  treatedM2: number,
  units: UnitSystem,
): CoverageFigures {
  const { onceM2, shortM2, twiceM2, missedM2, outsideM2, outsideOntoM2, rounds } = coverage;
  const stepM2 = areaStepM2(units);
  const partsM2 = [onceM2, shortM2, twiceM2, missedM2];
  const wholeM2 = sum(partsM2);
  const parts = partsM2.map((areaM2) => (wholeM2 > 0 ? areaM2 / wholeM2 : 0));
  // Scaled onto the shown total: the two differ by less than the last digit.
  const areas = apportionForDisplay(
    parts.map((part) => part * treatedM2),
    stepM2,
    treatedM2,
  );
  const shares = apportionForDisplay(parts, SHARE_STEP, 1);
  const [once, short, twice, missed] = areas.map((areaM2, i) => ({ areaM2, share: shares[i] as number })) as [
    CoveredGround,
    CoveredGround,
    CoveredGround,
    CoveredGround,
  ];
  const shownOutsideM2 = Math.round(outsideM2 / stepM2) * stepM2;
  const onto = apportionForDisplay(
    OUTSIDE_KINDS.map((kind) => outsideOntoM2[kind]),
    stepM2,
    shownOutsideM2,
  );
  return {
    once,
    short: rounds.length > 1 ? short : null,
    twice,
    missed,
    outside: { areaM2: shownOutsideM2, share: treatedM2 > 0 ? outsideM2 / treatedM2 : 0 },
    outsideOnto: OUTSIDE_KINDS.map((kind, i) => ({ kind, areaM2: onto[i] as number })).filter(
      ({ areaM2 }) => areaM2 > 0,
    ),
  };
}
