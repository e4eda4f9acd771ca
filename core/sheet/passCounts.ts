import type { Pass } from '../passes/index.ts';
import type { JobPlan } from '../plan/index.ts';
import { type ShownVolumeUnit, sum, type UnitSystem, volumeUnitFor } from '../units/index.ts';
import type { Applicator } from '../yard.ts';
import type { SheetFigures } from './sheetFigures.ts';

/** A pass as it is counted out on the ground. */
export interface PassCount {
  readonly pass: Pass;
  readonly timeS: number;
  /** Whole steps. */
  readonly steps: number;
  /** What should be left in the bottle or tank as the pass ends. */
  readonly leftL: number;
}

export interface LoadCounts {
  /** In walking order. */
  readonly passes: readonly PassCount[];
  /** What `leftL` is read in. */
  readonly unit: ShownVolumeUnit;
}

/**
 * Time, steps and level of every pass of one load, for screen and paper alike. Over a section the level falls with the
 * way walked, for an applicator lets out the same each second; as its last pass ends, what is left is for the sections
 * that share the load and are walked later.
 *
 * @param load number of a load of the plan
 */
export function passCounts(
  { ground }: JobPlan,
  figures: Pick<SheetFigures, 'loads' | 'productUnit'>,
  kind: Applicator['kind'],
  load: number,
  units: UnitSystem,
): LoadCounts {
  const parts = figures.loads.filter((part) => part.load === load);
  const { paceMPerS, stepM } = ground.request;
  // A hose-end bottle holds product alone; a tank the whole mix.
  const partsL = parts.map(({ productL, carrierL }) =>
    kind === 'hose-end' ? productL : productL + carrierL,
  );
  const passes = parts.flatMap(({ section }, place) => {
    const own = ground.passes.filter(({ sectionId }) => sectionId === section.id);
    const wholeM = sum(own.map(({ lengthM }) => lengthM));
    const laterL = sum(partsL.slice(place + 1));
    let walkedM = 0;
    return own.map((pass, i): PassCount => {
      walkedM += pass.lengthM;
      const ownL = i === own.length - 1 ? 0 : (partsL[place] as number) * (1 - walkedM / wholeM);
      return {
        pass,
        timeS: pass.lengthM / paceMPerS,
        steps: Math.round(pass.lengthM / stepM),
        leftL: laterL + ownL,
      };
    });
  });
  return { passes, unit: kind === 'hose-end' ? figures.productUnit : volumeUnitFor(sum(partsL), units) };
}
