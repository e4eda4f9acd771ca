import { lineLengthM } from '../../core/kernel/index.ts';
import { type Coverage, measureCoverage, type Pass } from '../../core/passes/index.ts';
import type { Region } from '../../core/spaces.ts';

/** Coverage of ground by lines walked once: each region a section, all passes those of the first. */
export function coverageOf(
  treated: readonly Region[],
  passes: readonly Pick<Pass, 'line'>[],
  swathM: number,
): Coverage {
  return measureCoverage({
    sections: treated.map((region, place) => ({ id: `A${place + 1}`, region })),
    untreated: [],
    passes: passes.map(({ line }) => ({ line, lengthM: lineLengthM(line), sectionId: 'A1', round: 1 })),
    swathM,
    rounds: 1,
  });
}
