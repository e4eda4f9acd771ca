import type { AreaSpread } from '../area/index.ts';
import type { Problem } from '../problems.ts';
import type { SlopedGround } from '../slope/index.ts';
import type { Region } from '../spaces.ts';
import type { UntreatedGround } from './untreated.ts';
import type { OverlapRule } from '../yard.ts';

/** What is treated, zone by zone, and what had to be said about the outlines. */
export interface ResolvedYard {
  /** In the order they were drawn. */
  readonly zones: readonly ResolvedZone[];
  /**
   * Ground inside two zones, at the one that owns it; empty when none. What a zone loses to each owner adds up to
   * its `ownedByOtherAreaM2`, so ground in three zones is there twice, as it is twice too often in the zones as drawn.
   */
  readonly overlaps: readonly ZoneOverlap[];
  /** Kept off along outlines, wherever they lie; what they leave untreated is in the zones. */
  readonly strips: readonly OutlineStrips[];
  /** What lies in and beside the zones and is not treated, as drawn, kind after kind; may overlap. */
  readonly untreated: readonly UntreatedGround[];
  /** Things the person should know that do not stop the work: a bed outside every zone, a zone covered whole. */
  readonly warnings: readonly Problem[];
}

/**
 * One zone. turf = zone - cut-outs - ground owned by other zones; treated = turf - keep-offs, keep-off strips and
 * check plots. The balance gross = turf + cutOut + ownedByOther closes to the kernel grid, and so does that of all
 * zones: the sum of gross - ownedByOther is the area of the zones' union.
 */
export interface ResolvedZone {
  readonly zoneId: string;
  readonly name: string;
  readonly grossAreaM2: number;
  readonly cutOutAreaM2: number;
  readonly ownedByOtherAreaM2: number;
  readonly turfAreaM2: number;
  readonly treatedAreaM2: number;
  /** One standard deviation of treatedAreaM2; null when nothing says how sure some of its points are. */
  readonly sigmaM2: number | null;
  /** The errors that make it up: what it shares with other zones, and what makes most of it. */
  readonly spread: AreaSpread;
  /** How its treated ground slopes; null = taken as level. Every area above is the map's. */
  readonly slope: SlopedGround | null;
  /** Surface over map area of the treated ground; 1 where it is level. */
  readonly surfaceFactor: number;
  /** What an area of the map, and its σ, is multiplied by for amounts: 1, or `surfaceFactor` if the yard says so. */
  readonly amountFactor: number;
  readonly turf: readonly Region[];
  readonly treated: readonly Region[];
}

/** Ground of one zone that another owns. */
export interface ZoneOverlap {
  readonly ownerId: string;
  readonly otherId: string;
  /** What gave it to the owner. */
  readonly by: OverlapRule | 'claimed';
  readonly areaM2: number;
  readonly regions: readonly Region[];
}

/** Ground kept off for the sake of one width that was set: all round an outline, or along one of its edges. */
export interface KeepOffStrip {
  readonly outlineId: string;
  /** 0 = the outer edge, then the holes. */
  readonly ring: number;
  /** The edge after the ring's corner of that number; null = all round every ring. */
  readonly edge: number | null;
  readonly widthM: number;
  /** On the kernel grid; strips of one outline may overlap. */
  readonly regions: readonly Region[];
}

/** The strips of one outline, and their ground counted once. */
export interface OutlineStrips {
  readonly outlineId: string;
  readonly strips: readonly KeepOffStrip[];
  readonly regions: readonly Region[];
}
