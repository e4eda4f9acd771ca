import type { CornerWorking, RingWorking } from '../../core/zones/index.ts';

/** A longer ring is folded on the screen, so that what comes after it can be found. */
export const MOST_CORNERS_SHOWN = 60;
/** What is left of a folded ring at its start and at its end: enough to see how it goes. */
const FOLDED_START = 8;
const FOLDED_END = 2;

export interface NumberedCorner extends CornerWorking {
  /** In the ring, counted from 1. */
  readonly number: number;
}

/** The corners to list: all of a short ring or one that was unfolded, else its first and last ones. */
export function shownCorners({ corners }: RingWorking, all: boolean): readonly NumberedCorner[] {
  const numbered = corners.map((corner, i) => ({ ...corner, number: i + 1 }));
  if (all || numbered.length <= MOST_CORNERS_SHOWN) return numbered;
  return [...numbered.slice(0, FOLDED_START), ...numbered.slice(-FOLDED_END)];
}
