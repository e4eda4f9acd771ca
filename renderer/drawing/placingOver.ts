import { regionContains } from '../../core/kernel/index.ts';
import type { Ring } from '../../core/spaces.ts';
import type { Picture, Placing } from '../../core/yard.ts';

/**
 * How the corners of a new outline were found: over the topmost picture with a scale that lies under all of them, else
 * by hand.
 *
 * @param pictures the lowest first, as they are drawn
 */
export function placingOver(pictures: readonly Picture[], corners: Ring): Placing {
  const under = pictures.findLast(({ placement }) => {
    if (placement.kind === 'unscaled') return false;
    const ground = { outer: placement.corners, holes: [] };
    return corners.every((corner) => regionContains(ground, corner));
  });
  return { by: under === undefined ? 'hand' : 'picture', pictureId: under?.id ?? null, sigmaM: null };
}
