import type { LonLat } from '../../../core/spaces.ts';
import type { MarkKind, OutlineKind, UnitSystem, YardDetails } from '../../../core/yard.ts';

/** What a file of outlines brings, still on the globe and not yet in any yard. */
export interface BroughtFeatures {
  readonly outlines: readonly BroughtOutline[];
  readonly marks: readonly BroughtMark[];
  /** Said by the file about the yard it was written from; null in a file that is not ours. */
  readonly yard: BroughtDetails | null;
  readonly notes: readonly string[];
}

/** Rings are open. `feature` names the outline's origin in the file, for problems. */
export interface BroughtOutline {
  readonly kind: OutlineKind;
  /** Null where the file gives none. */
  readonly name: string | null;
  readonly feature: string;
  readonly outer: readonly LonLat[];
  readonly holes: readonly (readonly LonLat[])[];
  /** Rise over run; null where the file states none. */
  readonly slopeGrade: number | null;
  /** Width of the strip kept off all round it; null where the file states none. */
  readonly keepOffM: number | null;
  readonly claimsOverlaps: boolean;
  /** Whether a hose goes round it; null where the file does not say. */
  readonly blocksHose: boolean | null;
}

export interface BroughtMark {
  readonly kind: MarkKind;
  readonly name: string | null;
  readonly at: LonLat;
}

export interface BroughtDetails {
  readonly name: string;
  readonly groundDate: string;
  readonly unitSystem: UnitSystem;
  readonly cornerSigmaM: number | null;
  readonly amountsBy: YardDetails['amountsBy'];
  readonly overlapRule: YardDetails['overlapRule'];
  readonly origin: LonLat;
}
