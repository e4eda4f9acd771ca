import { subtractRegions } from '../kernel/index.ts';
import type { Region, Ring } from '../spaces.ts';
import type { Coverage } from './coverage.ts';
import type { CoverageRequest } from './measureCoverage.ts';
import { swathPieces } from './swathPieces.ts';

/** Coverage as it is drawn: the more pieces lie over one another, the darker the ground. */
export interface SwathInk {
  /** Rings of every piece that coverage was counted by: outer counter-clockwise, holes clockwise. */
  readonly pieces: readonly (readonly Ring[])[];
  /** What swaths reach off the treated ground, however often. */
  readonly outside: readonly Region[];
}

/**
 * What has to be inked for a drawing to show the coverage that was measured: as many pieces over every spot of the
 * treated ground as `depthsM2` counts there.
 *
 * @param coverage measured of the same request
 * Accuracy: outside to the kernel grid for each metre of its edge; checked in tests/core/passes/swathInk.test.ts
 * Cost: none for pieces beyond making them; an overlay for each section that treats ground outside
 */
export function swathInk(
  { sections, passes, swathM }: Pick<CoverageRequest, 'sections' | 'passes' | 'swathM'>,
  coverage: Pick<Coverage, 'sections'>,
): SwathInk {
  const pieces = swathPieces(passes, swathM);
  const treated = sections.map(({ region }) => region);
  const strayed = new Set(
    coverage.sections.filter(({ outsideM2 }) => outsideM2 > 0).map(({ sectionId }) => sectionId),
  );
  const straying = pieces
    .filter(({ sectionId }) => strayed.has(sectionId))
    .map(({ rings: [outer, ...holes] }): Region => ({ outer: outer as Ring, holes }));
  return {
    pieces: pieces.map(({ rings }) => rings),
    outside: straying.length > 0 ? subtractRegions(straying, treated) : [],
  };
}
