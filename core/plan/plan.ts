import type { Coverage, Pass } from '../passes/index.ts';
import type { LoadMix } from '../applicators/index.ts';
import type { HoseGround, HosePlan } from '../hose/index.ts';
import type { Cut, CutLine, Section, TapeSide } from '../sections/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { ResolvedYard } from '../zones/index.ts';
import type { HeldCut, LaneHeading, SectionPolicy } from '../yard.ts';
import type { Problem } from '../problems.ts';

/** What a plan is made from, besides the outlines. */
export interface PlanRequest {
  /** What one load covers, in the terms of `ResolvedZone.amountFactor`; sections and their areas are the map's. */
  readonly loadAreaM2: number;
  readonly swathM: number;
  readonly paceMPerS: number;
  /** Only times and steps depend on it. */
  readonly stepM: number;
  readonly policy: SectionPolicy;
  readonly heading: LaneHeading;
  readonly rounds: 1 | 2;
  readonly heldCuts: readonly HeldCut[];
  readonly startAt: YardPoint | null;
  readonly finishAt: YardPoint | null;
  /** null = no hose is dragged. */
  readonly hose: HoseGround | null;
  /** Cut lines end on whole multiples of this from a corner where loads have room; null = anywhere. */
  readonly markM: number | null;
  /** The straight lines marks are counted along; none = the edges of the treated ground. */
  readonly tapeSides: readonly TapeSide[];
}

/** From the yard's ground to what is walked. */
export interface GroundPlan {
  readonly request: PlanRequest;
  readonly resolved: ResolvedYard;
  readonly sections: readonly Section[];
  readonly cuts: readonly Cut[];
  readonly cutLines: readonly CutLine[];
  /** In walking order; every section is in one of them. */
  readonly loads: readonly PlanLoad[];
  /** In walking order. */
  readonly passes: readonly Pass[];
  readonly coverage: Coverage;
  /** null where no hose is dragged. */
  readonly hose: HosePlan | null;
  readonly sectionFigures: readonly SectionFigures[];
  readonly onLengthM: number;
  readonly offLengthM: number;
  /** Of both lengths, what is walked over turf treated earlier. */
  readonly wetM: number;
  readonly timeS: number;
  readonly warnings: readonly Problem[];
}

/** One fill of the applicator: a section, or several small ones that share it. */
export interface PlanLoad {
  /** From 1. */
  readonly number: number;
  /** In walking order. */
  readonly sectionIds: readonly string[];
  /** In the terms of `ResolvedZone.amountFactor`, as the request's load area. */
  readonly areaM2: number;
}

export interface SectionFigures {
  readonly sectionId: string;
  readonly areaM2: number;
  readonly passes: number;
  readonly onLengthM: number;
  readonly offLengthM: number;
  /** Of both lengths, what is walked over turf treated earlier. */
  readonly wetM: number;
  readonly timeS: number;
  readonly headingDeg: number;
}

/** A ground plan and what goes into each load. */
export interface JobPlan {
  readonly ground: GroundPlan;
  /** One mix a section, in the order they are walked. */
  readonly mixes: readonly LoadMix[];
  /** One standard deviation of each section's area; null where it is not stated. */
  readonly sectionSigmas: ReadonlyMap<string, number | null>;
  /** The same of each load by its number, in the terms its amounts are worked out in. */
  readonly loadSigmas: ReadonlyMap<number, number | null>;
  readonly productTotalL: number;
  readonly carrierTotalL: number;
}
