import { TAPE_ENDS_SIGMA_M } from '../frame/index.ts';

/** Stretch, sag and a tape not held level: 1 mm in 10 m. Common practice, no source. */
const LENGTH_SIGMA = 0.0001;

/** One standard deviation of a distance taped over turf. */
export function tapeSigmaM(lengthM: number): number {
  return TAPE_ENDS_SIGMA_M + LENGTH_SIGMA * lengthM;
}
