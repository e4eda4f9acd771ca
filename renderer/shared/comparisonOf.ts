import {
  compareYards,
  type GroundChange,
  type YardComparison,
  ZONE_MEASURES,
  type ZoneMeasure,
} from '../../core/compare/index.ts';
import type { Result } from '../../core/result.ts';
import type { OutlineKind, Yard } from '../../core/yard.ts';

/** What of two states is drawn: a measure of the zones, or all outlines of one kind. */
export type ComparedGround = ZoneMeasure | OutlineKind;

const KNOWN = new WeakMap<Yard, WeakMap<Yard, Result<YardComparison>>>();

/** Two states compared; the page and the sketch beside it ask for the same two, and it is worked out once. */
export function comparisonOf(earlier: Yard, later: Yard): Result<YardComparison> {
  let byLater = KNOWN.get(earlier);
  if (byLater === undefined) {
    byLater = new WeakMap();
    KNOWN.set(earlier, byLater);
  }
  let comparison = byLater.get(later);
  if (comparison === undefined) {
    comparison = compareYards(earlier, later);
    byLater.set(later, comparison);
  }
  return comparison;
}

/** The ground to draw. Nothing where the kind is in neither state. */
export function groundToDraw(
  { zones, kinds }: YardComparison,
  of: ComparedGround,
): Pick<GroundChange, 'lost' | 'gained'> {
  const changes = isMeasure(of)
    ? zones.map((zone) => zone[of])
    : kinds.filter(({ kind }) => kind === of).map(({ ground }) => ground);
  return { lost: changes.flatMap(({ lost }) => lost), gained: changes.flatMap(({ gained }) => gained) };
}

export function isMeasure(of: ComparedGround): of is ZoneMeasure {
  return ZONE_MEASURES.some((measure) => measure === of);
}
