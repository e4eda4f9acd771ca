/**
 * Kernel: rings and regions on the plane of the yard. In: open rings in yard metres, outlines as a person drew
 * them; out: measures, clean regions, what is near. Method: one robust overlay library on a fixed grid, every
 * split held against an area identity with a second library behind it; predicates in exact arithmetic.
 * Out of scope: what a region means, and mending what a person drew.
 */
export { BoxIndex } from './BoxIndex.ts';
export { checkRing, MOST_REACH_M } from './checkRing.ts';
export { type HoleCandidate, isApart, placeClear, withClearHoles } from './clearHoles.ts';
export { GRID_M, snapRing } from './clipper.ts';
export { coveredTwice } from './coveredTwice.ts';
export { findCrossing, someCrossing } from './crossing.ts';
export { distanceM, distanceToEdgeM, lineLengthM, nearestOnEdge } from './distance.ts';
export { interiorPoint, regionContains } from './inside.ts';
export { isReflex } from './reflex.ts';
export { nearBox } from './nearBox.ts';
export { RegionIndex } from './RegionIndex.ts';
export { reversedRing } from './reversedRing.ts';
export { type BarrierCorner, SightLines } from './SightLines.ts';
export {
  boxesMeet,
  orientRegion,
  type RingBounds,
  regionAreaM2,
  regionsAreaM2,
  ringBounds,
  ringPerimeterM,
  signedAreaM2,
} from './measure.ts';
export {
  bufferLine,
  intersectRegions,
  offsetRegions,
  splitRegions,
  subtractRegions,
  unionRegions,
} from './overlay.ts';
export { type SweepTally, sweepLayers } from './sweepLayers.ts';
export { type Wind, windIn } from './wind.ts';
