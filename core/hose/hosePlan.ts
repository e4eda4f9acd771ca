import type { Problem } from '../problems.ts';
import type { Region, YardPoint } from '../spaces.ts';

/** Where the hose of a whole job lies and how much of it each section takes. */
export interface HosePlan {
  /** In walking order. */
  readonly sections: readonly SectionHose[];
  /** That reaches every section from its best spigot; null when no hose does. */
  readonly shortestHoseM: number | null;
  /** Laid over turf treated before, over all sections. */
  readonly overWetM: number;
  /** The ground the hose gets to from any of the spigots, but for what is kept off round barriers. */
  readonly reach: readonly Region[];
  readonly warnings: readonly Problem[];
}

export interface SectionHose {
  readonly sectionId: string;
  /** From which it takes the least hose; null when no hose gets to all of it. */
  readonly spigotId: string | null;
  /** To the farthest place the applicator gets to; null without a spigot. */
  readonly neededM: number | null;
  readonly isBeyond: boolean;
  /** The same from every spigot of the job. */
  readonly bySpigot: readonly { readonly spigotId: string; readonly neededM: number | null }[];
  /** How the hose lies when the section is begun: to its nearest place; empty without a spigot. */
  readonly line: readonly YardPoint[];
  readonly lengthM: number;
  readonly bends: readonly HoseBend[];
  /** Of that way, what lies on sections treated before. */
  readonly overWetM: number;
}

/** A corner the hose is laid round. */
export interface HoseBend {
  readonly at: YardPoint;
  readonly outlineId: string;
  /** "NE corner of house"; on a curve "NE side of pond". */
  readonly name: string;
  /** How far it turns there. */
  readonly turnRad: number;
  /** It turns enough to catch there when it is pulled. */
  readonly maySnag: boolean;
}
