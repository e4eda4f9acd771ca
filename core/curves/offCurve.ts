/** The drawn edge is nowhere farther than this from the true curve, in metres: less than a tape can be read to. */
export const MOST_OFF_CURVE_M = 0.002;
/** Chords of one edge. Ground the kernel takes (10 km to every side) needs some 5,000. */
export const MOST_CHORDS = 10_000;
/** Fewer corners to a full turn look like a nut, whatever the size. */
export const LEAST_PER_TURN = 24;

/**
 * As many chords as asked for, or the fewest there are: an edge that would take more than the most is of a size the
 * kernel's check turns away, and is not worth a ring of a million corners first.
 */
export function soundCount(chords: number): number {
  // Written so that NaN is absurd too.
  return chords <= MOST_CHORDS ? chords : LEAST_PER_TURN;
}
