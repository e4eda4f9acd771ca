/** How far a hose that nobody has measured keeps from a corner it is pulled round, in metres: common practice, no source. */
export const USUAL_CLEARANCE_M = 0.15;
