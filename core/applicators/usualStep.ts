/** Length of a step nobody has measured, in metres: common practice, no source. */
export const USUAL_STEP_M = 0.7;
