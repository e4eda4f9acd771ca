/** Two ends held by hand against a corner and a mark in the grass. Common practice, no source. */
const ENDS_SIGMA_M = 0.01;
/** Stretch, sag and a tape not held level: 1 mm in 10 m. Common practice, no source. */
const LENGTH_SIGMA = 0.0001;

/** One standard deviation of a distance taped over turf. */
export function tapeSigmaM(lengthM: number): number {
  return ENDS_SIGMA_M + LENGTH_SIGMA * lengthM;
}
