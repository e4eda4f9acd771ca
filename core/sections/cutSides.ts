import { loadsFor } from '../applicators/index.ts';
import { regionAreaM2 } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import { type CutEnds, splitAlong } from './splitAlong.ts';

/** The ground on one hand of a cut, and how many loads it takes. */
export interface CutSide {
  readonly areaM2: number;
  readonly loads: number;
}

/** What a cut leaves on its left and its right. */
export interface CutSides {
  readonly left: CutSide;
  readonly right: CutSide;
  /** Loads more than the whole ground takes when it is cut anywhere: what the place of this cut costs. */
  readonly moreLoads: number;
}

/**
 * @param bed the ground the cut parts
 * @param loadAreaM2 map area one load treats there
 * @returns undefined when the cut does not part the ground in two
 */
export function cutSides(bed: Region, cut: CutEnds, loadAreaM2: number): CutSides | undefined {
  const sides = splitAlong(bed, cut);
  if (sides === undefined) return undefined;
  const of = (region: Region): CutSide => {
    const areaM2 = regionAreaM2(region);
    return { areaM2, loads: loadsFor(areaM2, loadAreaM2) };
  };
  const [left, right] = [of(sides.left), of(sides.right)];
  const least = loadsFor(regionAreaM2(bed), loadAreaM2);
  return { left, right, moreLoads: left.loads + right.loads - least };
}
