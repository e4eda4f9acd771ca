/**
 * Slope: how much larger sloping ground is than its map. In: what a person types of a slope, or an elevation grid
 * and regions; out: a grade (rise over run) and the surface over the map's area. Method: √(1 + g²), for one grade
 * or facet by facet. Out of scope: which of a yard's zones slopes, and which area amounts are taken from.
 */
export { AMOUNTS_BY_WORDS } from './amountsBy.ts';
export { type ElevationFacts, elevationFacts, readAnew } from './elevationFacts.ts';
export {
  degreesOfGrade,
  formatGrade,
  gradeOf,
  gradeOfDegrees,
  MOST_GRADE,
  STEEP_GRADE,
  surfaceFactor,
} from './grade.ts';
export { parseGrade } from './parseGrade.ts';
export { type SlopedGround, surfaceByFacets } from './surfaceByFacets.ts';
