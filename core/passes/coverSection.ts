import { regionAreaM2, sweepLayers } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import { DEEPEST, type RoundCoverage, type SectionCoverage } from './coverage.ts';
import type { SwathPiece } from './swathPieces.ts';

/** A section as its ground is covered, and the ground its own swaths treat beside it. */
export interface CoveredSection
  extends Pick<
    SectionCoverage,
    'treatedM2' | 'onceM2' | 'shortM2' | 'twiceM2' | 'missedM2' | 'depthsM2' | 'rounds'
  > {
  readonly strayedM2: number;
}

/**
 * One section by how many swath pieces lie on it.
 *
 * @param pieces all that may reach it, those of other sections too
 */
export function coverSection(
  section: { readonly id: string; readonly region: Region },
  pieces: readonly SwathPiece[],
  rounds: 1 | 2,
): CoveredSection {
  const { outer, holes } = section.region;
  const depthsM2 = Array.from({ length: DEEPEST + 1 }, () => 0);
  /** For each round, ground covered 0, 1, 2 or more times by it. */
  const roundsM2 = Array.from({ length: rounds }, () => [0, 0, 0]);
  const depths = roundsM2.map(() => 0);
  let isInside = false;
  let own = 0;
  let strayedM2 = 0;
  sweepLayers([[outer, ...holes], ...pieces.map(({ rings }) => rings)], {
    cross(layer, isIn) {
      const piece = pieces[layer - 1];
      const change = isIn ? 1 : -1;
      if (piece === undefined) {
        isInside = isIn;
        return;
      }
      depths[piece.round - 1] = (depths[piece.round - 1] as number) + change;
      if (piece.sectionId === section.id) own += change;
    },
    add(areaM2) {
      if (!isInside) {
        if (own > 0) strayedM2 += areaM2;
        return;
      }
      let whole = 0;
      for (let round = 0; round < rounds; round++) {
        const depth = depths[round] as number;
        whole += depth;
        addTo(roundsM2[round] as number[], depth, areaM2);
      }
      addTo(depthsM2, whole, areaM2);
    },
  });
  const [missedM2, ...coveredM2] = depthsM2 as [number, ...number[]];
  const between = (from: number, to: number): number =>
    coveredM2.slice(from - 1, to).reduce((sum, areaM2) => sum + areaM2, 0);
  const shortM2 = between(1, rounds - 1);
  const twiceM2 = between(rounds + 1, DEEPEST);
  const treatedM2 = regionAreaM2(section.region);
  return {
    treatedM2,
    // What is left, so that the parts are the whole to the last digit.
    onceM2: treatedM2 - missedM2 - shortM2 - twiceM2,
    shortM2,
    twiceM2,
    missedM2,
    depthsM2,
    rounds: roundsM2.map(([missed, , twice]): RoundCoverage => {
      const [missedM2, twiceM2] = [missed as number, twice as number];
      return { onceM2: treatedM2 - missedM2 - twiceM2, twiceM2, missedM2 };
    }),
    strayedM2,
  };
}

/** Adds to the place of a depth, or to the last for any deeper. */
function addTo(areasM2: number[], depth: number, areaM2: number): void {
  const place = Math.min(depth, areasM2.length - 1);
  areasM2[place] = (areasM2[place] as number) + areaM2;
}
