/** The drawn edge is nowhere farther than this from the true curve, in metres: less than a tape can be read to. */
export const MOST_OFF_CURVE_M = 0.002;
/** Chords of one edge. Ground the kernel takes (10 km) needs 5,000; absurd sizes are turned away by its check. */
export const MOST_CHORDS = 10_000;
/** Fewer corners to a full turn look like a nut, whatever the size. */
export const LEAST_PER_TURN = 24;
