import type { Outline } from '../yard.ts';

/** An outline with the usual for all that is not said: no holes, placed by hand, level, nothing kept off. */
export function newOutline(
  said: Pick<Outline, 'id' | 'kind' | 'name' | 'outer'> & Partial<Outline>,
): Outline {
  return {
    holes: [],
    placing: { by: 'hand', pictureId: null, sigmaM: null },
    keepOffM: null,
    slope: null,
    claimsOverlaps: false,
    blocksHose: null,
    ...said,
  };
}
