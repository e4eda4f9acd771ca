import type { Yard, YardDetails } from '../yard.ts';

/** The part of a yard that says how big it is, and how sure that is. */
export interface Ground extends Pick<Yard, 'outlines' | 'pictures' | 'elevations'> {
  readonly details: Pick<YardDetails, 'cornerSigmaM' | 'overlapRule' | 'amountsBy'>;
}
