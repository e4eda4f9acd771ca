/**
 * Zones: from outlines to what is treated. In: the part of a yard that says how big it is, and how sure that is;
 * out: for each zone its balance, σ, slope and the clean regions of turf and of treated ground, the figures shown for
 * them, and their working as numbers and as text. Method: overlays by `core/kernel`; ground in two zones is owned by
 * one of them, by one order for all; strips kept off along edges are buffers of them; figures are rounded once, by
 * largest remainder. Out of scope: how σ is made up (`core/area`), curves (`core/curves`), surfaces (`core/slope`).
 */
export {
  type AreaWorking,
  areaWorking,
  type BalanceItem,
  type BalanceLine,
  type TakenShape,
  type TakenWorking,
} from './areaWorking.ts';
export { balanceWords } from './balanceWords.ts';
export type { Ground } from './ground.ts';
export { checkOutline } from './checkOutline.ts';
export {
  type PrintedAreas,
  type PrintedSum,
  type PrintedZone,
  printedSum,
  printedZones,
} from './printedZones.ts';
export { type CutEnds, partSpreads, type ZonePart } from './partSpreads.ts';
export { type PrintedOverlap, printedOverlaps } from './printedOverlaps.ts';
export { resolveZones } from './resolveZones.ts';
export type {
  KeepOffStrip,
  OutlineStrips,
  ResolvedYard,
  ResolvedZone,
  ZoneOverlap,
} from './resolved.ts';
export { shapeOf } from './shape.ts';
export { sigmaTable, sigmaWords, tightenWords } from './sigmaText.ts';
export { type SigmaPart, type SigmaWorking, sigmaWorking, type Tightener } from './sigmaWorking.ts';
export { WIDEST_STRIP_M } from './strips.ts';
export { type CornerWorking, type RingWorking, ringWorking } from './ringWorking.ts';
export {
  BALANCE_WORDS,
  roundingWords,
  twiceWords,
  workingText,
} from './workingText.ts';
export type { CurveWorking, SegmentWorking } from './curveWorking.ts';
export { curveWords, drawnWords, segmentTable } from './curveText.ts';
export { type FramedRings, frameWords } from './frameWords.ts';
export { type OutlineWorking, outlineSumWords, outlineText, outlineWorking } from './outlineWorking.ts';
export { RING_FORMULA, ringSumWords, ringText } from './ringText.ts';
export { type SlopeWorking, slopeWords } from './slopeWorking.ts';
export { columnWidths, textTable } from './textTable.ts';
export { edgeName, type TracedWorking } from './tracedWorking.ts';
export { UNTREATED_KINDS, type UntreatedGround, type UntreatedKind } from './untreated.ts';
export { yardWorkingText } from './yardWorkingText.ts';
export { unstatedWords } from './unstatedWords.ts';
export { shownText, workedText } from './workedText.ts';
