import type { Problem } from '../problems.ts';
import type { Region } from '../spaces.ts';

/** What is treated, zone by zone, and what had to be said about the outlines. */
export interface ResolvedYard {
  readonly zones: readonly ResolvedZone[];
  /** Ground inside two zones, given to the one drawn first; empty when none. */
  readonly overlaps: readonly ZoneOverlap[];
  /** Things the person should know that do not stop the work: a bed outside every zone, a zone covered whole. */
  readonly warnings: readonly Problem[];
}

/**
 * One zone. turf = zone - cut-outs - ground owned by earlier zones; treated = turf - keep-offs - check plots.
 * The balance gross = turf + cutOut + ownedByOther closes to the kernel grid.
 */
export interface ResolvedZone {
  readonly zoneId: string;
  readonly name: string;
  readonly grossAreaM2: number;
  readonly cutOutAreaM2: number;
  readonly ownedByOtherAreaM2: number;
  readonly turfAreaM2: number;
  readonly treatedAreaM2: number;
  /** One standard deviation of treatedAreaM2; null when the corner sigma is not stated. */
  readonly sigmaM2: number | null;
  readonly turf: readonly Region[];
  readonly treated: readonly Region[];
}

export interface ZoneOverlap {
  readonly ownerId: string;
  readonly otherId: string;
  readonly areaM2: number;
  readonly regions: readonly Region[];
}
