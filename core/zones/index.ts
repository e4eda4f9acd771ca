/**
 * Zones: from outlines to what is treated. In: outlines as drawn; out: for each zone its balance and the clean
 * regions of turf and of treated ground. Method: overlays by `core/kernel`; ground in two zones is owned by the
 * one drawn first. Out of scope: buffers along edges, slope.
 */
export {
  type AreaWorking,
  areaWorking,
  type BalanceItem,
  type BalanceLine,
  type SigmaWorking,
  type TakenShape,
  type TakenWorking,
} from './areaWorking.ts';
export type { Ground } from './ground.ts';
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
export { type CornerWorking, type RingWorking, ringWorking } from './ringWorking.ts';
export {
  BALANCE_WORDS,
  frameWords,
  ringSumWords,
  roundingWords,
  shownText,
  sigmaWords,
  TWICE_WORDS,
  workedText,
  workingText,
} from './workingText.ts';
