import type { GroundPlan } from '../plan/index.ts';
import { apportionForDisplay, formatNumber, lengthFigure, lengthUnitM, sum } from '../units/index.ts';
import type { UnitSystem } from '../yard.ts';

/** How far is walked in a section or in all, in metres that are whole feet or metres as shown. */
export interface WalkFigures {
  /** With the applicator on and off. */
  readonly walkM: number;
  readonly onM: number;
  /** Of the walk, what goes over turf treated earlier. */
  readonly wetM: number;
}

/** The walks of a plan as shown. */
export interface ShownWalks {
  readonly bySection: ReadonlyMap<string, WalkFigures>;
  readonly all: WalkFigures;
}

/**
 * The walks of sections and of all in whole feet or metres: every column adds up as shown.
 *
 * Accuracy: no figure is off by a whole step, see apportionForDisplay
 */
export function walkFigures(
  { sectionFigures, onLengthM, offLengthM, wetM }: GroundPlan,
  units: UnitSystem,
): ShownWalks {
  const stepM = lengthUnitM(units);
  const shown = (partsM: readonly number[], wholeM: number): number[] =>
    apportionForDisplay(partsM, stepM, wholeM);
  const walksM = shown(
    sectionFigures.map((own) => own.onLengthM + own.offLengthM),
    onLengthM + offLengthM,
  );
  const onM = shown(
    sectionFigures.map((own) => own.onLengthM),
    onLengthM,
  );
  const wetsM = shown(
    sectionFigures.map((own) => own.wetM),
    wetM,
  );
  return {
    bySection: new Map(
      sectionFigures.map(({ sectionId }, i) => [
        sectionId,
        { walkM: walksM[i] ?? 0, onM: onM[i] ?? 0, wetM: wetsM[i] ?? 0 },
      ]),
    ),
    all: { walkM: sum(walksM), onM: sum(onM), wetM: sum(wetsM) },
  };
}

/** A length of a walk, in whole feet or metres without the unit. */
export function walkText(lengthM: number, units: UnitSystem): string {
  return formatNumber(lengthM / lengthUnitM(units), 0);
}

/** What of the walk goes over turf treated before, in a line. */
export function wetWords({ all }: ShownWalks, units: UnitSystem): string {
  if (all.wetM === 0) return 'none of the walk is over turf treated before';
  return `${walkText(all.wetM, units)} ${lengthFigure(0, units).unit} of the walk over turf treated before`;
}
