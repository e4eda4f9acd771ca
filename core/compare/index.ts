/**
 * Compare: what changed on the ground between two states of one yard. In: an earlier and a later yard document; out:
 * for each zone and each kind of outline the ground lost, gained and left as it was, as areas and as regions to
 * draw. Method: both are resolved in their own frame, the earlier is carried into the later's through places on
 * earth, then overlays by `core/kernel`. Out of scope: products and jobs, and who changed what when.
 */
export { compareYards, ZONE_MEASURES } from './compareYards.ts';
export type {
  AreaChange,
  GroundChange,
  KindChange,
  NamedArea,
  YardComparison,
  ZoneChange,
  ZoneMeasure,
} from './comparison.ts';
export { type PrintedChange, printedChanges, printedChangeSum, shownAloneM2 } from './printedChanges.ts';
