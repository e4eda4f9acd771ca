/**
 * Sections: the treated ground of a zone cut into connected pieces that one load each can treat.
 *
 * In: regions in yard metres, and the ground one load covers. Out: numbered sections that sum to the zone, and
 * the straight borders between them. Method: parting in two again and again along the shortest straight cut that
 * leaves both sides connected, each cut placed exactly by area and then moved to marks a tape can set, as far as
 * the loads have room; whole trees of cuts are compared, with an effort that is counted. Cuts a person holds are made
 * before all others.
 * Out of scope: which sections share a load, and the order they are walked in.
 */
export { cutBed, cutUnder } from './cutBed.ts';
export {
  addCut,
  holdCut,
  isSameLine,
  letAllCutsGo,
  letCutGo,
  moveCut,
} from './cutEdits.ts';
export { type CutSide, type CutSides, cutSides } from './cutSides.ts';
export { joinSections, type PlannedSections } from './joinSections.ts';
export { type Begun, NOTHING_BEGUN } from './fillLoads.ts';
export { orderSections } from './orderSections.ts';
export { MOST_SECTIONS, planSections } from './planSections.ts';
export type { SectionRequest, ZoneGround, ZoneSections } from './planSections.ts';
export type { Cut, CutLine, Section } from './section.ts';
export {
  cutTable,
  type SectionWorking,
  sectionShownWords,
  sectionSlopeWords,
  sectionSumWords,
  sectionText,
  sectionWorking,
} from './sectionWorking.ts';
export {
  atAlong,
  type EdgePlace,
  leftOfM,
  nearestEdgePlace,
  nextMark,
  onMark,
  parallelCut,
} from './slideCut.ts';
export { type CutEnds, splitAlong } from './splitAlong.ts';
export { tapeMarkM } from './tapeMark.ts';
export { type TapeSide, TapeSides } from './TapeSides.ts';
export { type PlannedCuts, type WholeCut, wholeCuts } from './wholeCuts.ts';
