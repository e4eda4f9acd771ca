/**
 * Zones: from outlines to what is treated. In: outlines as drawn; out: for each zone its balance and the clean
 * regions of turf and of treated ground. Method: overlays by `core/kernel`; ground in two zones is owned by the
 * one drawn first. Out of scope: buffers along edges, slope.
 */
export { checkOutline } from './checkOutline.ts';
export {
  areaStepM2,
  type PrintedSum,
  type PrintedZone,
  printedSum,
  printedZones,
} from './printedZones.ts';
export { resolveZones } from './resolveZones.ts';
export type { ResolvedYard, ResolvedZone, ZoneOverlap } from './resolved.ts';
