import type { YardPoint } from './spaces.ts';

/**
 * Every expected trouble, as plain data. The words for each are in `problemText.ts`, complete by type.
 * `where` says which thing and, if it has a place, where on the ground; `facts` carry the numbers and names
 * the words need.
 */
export type Problem =
  // shape/: the person mends it on the map
  | ShapeProblem<'shape/self-crossing', { readonly crossing: YardPoint }>
  | ShapeProblem<'shape/not-uncrossed', { readonly crossing: YardPoint }>
  | ShapeProblem<'shape/too-few-points', { readonly points: number }>
  | ShapeProblem<'shape/zero-area', object>
  | ShapeProblem<'shape/not-finite', object>
  | ShapeProblem<'shape/no-size', { readonly size: 'radius' | 'length' | 'width' }>
  | ShapeProblem<'shape/cut-out-outside', object>
  | ShapeProblem<'shape/covered-whole', object>
  | ShapeProblem<
      'shape/overlaps',
      { readonly ownerName: string; readonly by: OwnedBy; readonly overlapM2: number }
    >
  | ShapeProblem<'shape/keep-off-width', { readonly widthM: number; readonly mostM: number }>
  | ShapeProblem<'shape/too-large', { readonly extentM: number }>
  | ShapeProblem<'shape/no-grade', { readonly mostGrade: number }>
  | ShapeProblem<'shape/steep', { readonly steepM2: number; readonly steepestGrade: number }>
  | ShapeProblem<'shape/heights-missing', { readonly missingM2: number }>
  // value/: the person mends it at a field
  | ValueProblem<'value/not-a-number', { readonly typed: string }>
  | ValueProblem<'value/not-a-date', { readonly typed: string }>
  | ValueProblem<'value/missing-unit', { readonly typed: string; readonly expected: string }>
  | ValueProblem<
      'value/out-of-range',
      { readonly least: number; readonly most: number; readonly unit: string }
    >
  | ValueProblem<'value/not-positive', object>
  | ValueProblem<'value/no-scale', object>
  | ValueProblem<'value/unknown-unit', { readonly typed: string; readonly expected: string }>
  | ValueProblem<'value/rate-over-label', { readonly rateLPerM2: number; readonly mostRateLPerM2: number }>
  | ValueProblem<
      'value/carrier-under-label',
      { readonly carrierLPerM2: number; readonly leastCarrierLPerM2: number }
    >
  | ValueProblem<'value/rate-over-carrier', { readonly rateLPerM2: number; readonly carrierLPerM2: number }>
  | ValueProblem<
      'value/carrier-unusual',
      { readonly carrierLPerM2: number; readonly leastLPerM2: number; readonly mostLPerM2: number }
    >
  | ValueProblem<'value/missing', object>
  | ValueProblem<'value/too-few', { readonly found: number; readonly least: number }>
  | ValueProblem<'value/counts-differ', { readonly found: number; readonly expected: number }>
  | ValueProblem<
      'value/tapes-do-not-meet',
      { readonly firstM: number; readonly secondM: number; readonly apartM: number }
    >
  | ValueProblem<'value/tapes-cross-flat', { readonly timesError: number }>
  | ValueProblem<'value/nothing-to-hold', object>
  | ValueProblem<'value/radius-below-half-chord', { readonly radiusM: number; readonly leastM: number }>
  | ValueProblem<'value/behind-baseline', { readonly offsetM: number }>
  | ValueProblem<'value/closes-badly', { readonly misclosureM: number; readonly oneIn: number }>
  | ValueProblem<'value/too-steep', { readonly grade: number; readonly mostGrade: number }>
  | ValueProblem<'value/scale-does-not-fit', { readonly scale: number; readonly fittingScale: number }>
  | ValueProblem<'value/lengths-disagree', { readonly lengthM: number; readonly byOthersM: number }>
  | ValueProblem<'value/not-a-place', { readonly typed: string }>
  | ValueProblem<'value/place-out-of-range', { readonly swappedLikely: boolean }>
  | ValueProblem<'value/unknown-crs', { readonly crs: string }>
  | ValueProblem<'value/place-outside-crs', { readonly crs: string }>
  | ValueProblem<'value/places-coincide', object>
  | ValueProblem<'value/scale-misfit', { readonly ratio: number }>
  | ValueProblem<'value/no-such-mark', { readonly typed: string; readonly known: readonly string[] }>
  // plan/
  | PlanProblem<'plan/load-below-one-swath-square', { readonly capacityM2: number; readonly swathM: number }>
  | PlanProblem<'plan/swath-wider-than-zone', { readonly swathM: number }>
  | PlanProblem<'plan/too-narrow-to-walk', { readonly areaM2: number; readonly widthM: number }>
  | PlanProblem<'plan/nothing-to-treat', object>
  | PlanProblem<'plan/too-many-sections', { readonly sections: number; readonly most: number }>
  | PlanProblem<'plan/no-connected-cut', { readonly sections: number }>
  | PlanProblem<'plan/cancelled', object>
  | PlanProblem<'plan/held-cut-parts-nothing', { readonly place: number; readonly isZoneGone: boolean }>
  | PlanProblem<'plan/sections-apart', object>
  | PlanProblem<'plan/join-over-load', { readonly togetherM2: number; readonly loadAreaM2: number }>
  | PlanProblem<'plan/join-not-straight', object>
  | PlanProblem<'plan/cut-off-edge', object>
  | PlanProblem<'plan/cut-parts-nothing', object>
  | PlanProblem<'plan/no-spigot', object>
  | PlanProblem<'plan/spigot-in-wall', { readonly depthM: number; readonly mostM: number }>
  | PlanProblem<'plan/spigot-shut-in', { readonly clearanceM: number; readonly isByClearance: boolean }>
  | PlanProblem<'plan/hose-no-way', { readonly clearanceM: number; readonly isByClearance: boolean }>
  | PlanProblem<
      'plan/hose-too-short',
      { readonly lengthM: number; readonly neededM: number; readonly isAll: boolean }
    >
  // compare/: two states of a yard that cannot be laid over each other
  | CompareProblem<
      'compare/only-one-placed',
      { readonly looseName: string; readonly looseIs: 'earlier' | 'later' }
    >
  | CompareProblem<'compare/too-far-apart', { readonly apartM: number }>
  // file/: the host found it; the person chooses
  | FileProblem<'file/not-found', object>
  | FileProblem<'file/not-a-yard', { readonly found: string }>
  | FileProblem<'file/newer-version', { readonly fileVersion: number; readonly ourVersion: number }>
  | FileProblem<'file/damaged', { readonly detail: string }>
  | FileProblem<'file/locked', object>
  | FileProblem<'file/read-only', object>
  | FileProblem<'file/disk-full', object>
  | FileProblem<'file/exists', object>
  | FileProblem<'file/too-large', { readonly bytes: number; readonly mostBytes: number }>
  | FileProblem<
      'file/too-many-pixels',
      { readonly widthPx: number; readonly heightPx: number; readonly mostPx: number }
    >
  | FileProblem<'file/yard-has-no-place', object>
  | FileProblem<'file/heights-alone', object>
  | FileProblem<'file/heights-elsewhere', object>
  | FileProblem<'file/too-many-heights', { readonly heights: number; readonly most: number }>
  | FileProblem<'file/unknown-kind', { readonly found: string }>
  | FileProblem<'file/unreadable', { readonly detail: string }>
  | FileProblem<'file/no-georeference', object>
  | FileProblem<'file/unknown-crs', { readonly crs: string }>
  | FileProblem<
      'file/coordinates-out-of-range',
      { readonly feature: string; readonly swappedLikely: boolean }
    >
  | FileProblem<'file/broken-ring', { readonly feature: string; readonly detail: string }>
  | FileProblem<'file/nothing-in-it', object>
  // host/: the door refused what came through it
  | HostProblem<'host/bad-request', { readonly detail: string }>
  | HostProblem<'host/unknown-yard', object>
  | HostProblem<'host/stale-edit', object>
  | HostProblem<'host/unreachable', object>
  | HostProblem<'host/defect', { readonly detail: string }>;

/** What gave shared ground to its owner: the yard's rule, or that the owner claims it. */
export type OwnedBy = 'drawn-first' | 'drawn-last' | 'smaller' | 'larger' | 'claimed';

interface ProblemShape<K extends string, W, F> {
  readonly kind: K;
  readonly where: W;
  readonly facts: F;
}

/** `at` is the place to show on the map, when there is one. */
export interface ShapeWhere {
  readonly outlineId: string;
  readonly name: string;
  readonly at?: YardPoint;
}
/** `field` is the field's name as the screen and the command say it. */
export interface FieldWhere {
  readonly field: string;
}
/** `thing` is the zone, section or spigot that cannot be planned. */
export interface PlanWhere {
  readonly thing: string;
}
export interface FileWhere {
  readonly fileName: string;
}

type ShapeProblem<K extends `shape/${string}`, F> = ProblemShape<K, ShapeWhere, F>;
type ValueProblem<K extends `value/${string}`, F> = ProblemShape<K, FieldWhere, F>;
type PlanProblem<K extends `plan/${string}`, F> = ProblemShape<K, PlanWhere, F>;
type CompareProblem<K extends `compare/${string}`, F> = ProblemShape<K, object, F>;
type FileProblem<K extends `file/${string}`, F> = ProblemShape<K, FileWhere, F>;
type HostProblem<K extends `host/${string}`, F> = ProblemShape<K, object, F>;

export type ProblemKind = Problem['kind'];
export type ProblemOf<K extends ProblemKind> = Extract<Problem, { readonly kind: K }>;
