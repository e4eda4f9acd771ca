/**
 * Sections: the treated ground of a zone cut into connected pieces that one load each can treat.
 *
 * In: regions in yard metres, and the ground one load covers. Out: numbered sections that sum to the zone, and
 * the straight borders between them. Method: parting in two again and again along the shortest straight cut that
 * leaves both sides connected, each cut placed exactly by area and then moved to marks a tape can set, as far as
 * the loads have room; a beam of fixed width keeps the search short.
 * Out of scope: joining the remainder of one piece to the next zone.
 */
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
export { tapeMarkM } from './tapeMark.ts';
export type { TapeSide } from './TapeSides.ts';
