import type { CornerWorking, RingWorking } from '../../core/zones/index.ts';

/** A longer ring is folded on the screen, so that what comes after it can be found. */
export const MOST_CORNERS_SHOWN = 60;
/** Of a curve the formula tells more than the corners it is computed with. */
export const MOST_CURVE_CORNERS_SHOWN = 12;
/** What is left of a folded ring at its start and at its end: enough to see how it goes. */
const FOLDED_START = 8;
const FOLDED_END = 2;

export interface NumberedCorner extends CornerWorking {
  /** In the ring, counted from 1. */
  readonly number: number;
}

/** The corners to list: all of a ring that has no more than `most`, else its first and last ones. */
export function shownCorners({ corners }: RingWorking, most: number): readonly NumberedCorner[] {
  const numbered = corners.map((corner, i) => ({ ...corner, number: i + 1 }));
  if (numbered.length <= most) return numbered;
  return [...numbered.slice(0, FOLDED_START), ...numbered.slice(-FOLDED_END)];
}
