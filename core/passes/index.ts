/**
 * Passes: where to walk with the applicator on, in what order, and what that treats.
 *
 * In: a section, a swath, perhaps a heading. Out: perimeter passes and lanes in walking order, the walk between
 * them, and coverage measured by overlay. Method: passes half a swath inside the edges; even strips over what is
 * left, at the heading along an edge that walks least; a local search over the order. Out of scope: the hose, and
 * ground so narrow that most of a swath would fall beside it.
 */
export { bearingDegOf, laneHeadings } from './headings.ts';
export { type LaidPasses, layPasses } from './layPasses.ts';
export type { Ends, Walk } from './leg.ts';
export {
  type Coverage,
  DEEPEST,
  type GroundCoverage,
  OUTSIDE_KINDS,
  type OutsideKind,
  type RoundCoverage,
  type SectionCoverage,
} from './coverage.ts';
export { type CoverageRequest, measureCoverage } from './measureCoverage.ts';
export type { Pass } from './pass.ts';
export { dryOrder } from './dryOrder.ts';
export { orderPasses } from './orderPasses.ts';
export { passesOf, type PassRequest, planPasses, type SectionPasses } from './planPasses.ts';
export { makeWalkable, type Walkable } from './walkInside.ts';
export { type SwathInk, swathInk } from './swathInk.ts';
export { wetWalkM } from './wetWalk.ts';
