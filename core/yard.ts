import type { LonLat, PicturePoint, YardPoint } from './spaces.ts';
import type { UnitSystem } from './units/index.ts';

/**
 * The yard document: plain, immutable data, everything a person drew or typed and nothing that can be
 * derived from it. Areas, sections, passes and amounts are computed from it, never stored as truth.
 * It changes only through `core/edits`.
 */
export interface Yard {
  readonly details: YardDetails;
  readonly pictures: readonly Picture[];
  readonly outlines: readonly Outline[];
  readonly marks: readonly Mark[];
  readonly elevations: readonly Elevation[];
  readonly checks: readonly FieldCheck[];
  readonly products: readonly Product[];
  readonly applicators: readonly Applicator[];
  readonly jobs: readonly Job[];
}

/** One row, id always 'yard'. `groundDate` is the ISO date (yyyy-mm-dd) of the state of the ground drawn. */
export interface YardDetails {
  readonly id: 'yard';
  readonly name: string;
  readonly groundDate: string;
  readonly unitSystem: UnitSystem;
  readonly frame: YardFrame;
  /** Standard deviation of one hand-placed corner where nothing nearer says otherwise; null = not stated. */
  readonly cornerSigmaM: number | null;
  readonly overlapRule: OverlapRule;
  /** Which area the amounts are taken from: the map's own, or that of the sloping ground. */
  readonly amountsBy: 'plan' | 'surface';
}

/** Which of two zones owns the ground inside both. A zone that claims its overlaps goes before every other. */
export const OVERLAP_RULES = ['drawn-first', 'drawn-last', 'smaller', 'larger'] as const;
export type OverlapRule = (typeof OVERLAP_RULES)[number];

export type { UnitSystem };

/** A placed yard's frame is transverse Mercator on WGS84 with scale 1 at `origin`; a loose one is nowhere on earth. */
export type YardFrame = { readonly kind: 'placed'; readonly origin: LonLat } | { readonly kind: 'loose' };

/** A base picture. Its bytes lie in the yard file under `imageHash` (lower-case hex SHA-256 of the bytes). */
export interface Picture {
  readonly id: string;
  readonly name: string;
  readonly imageHash: string;
  readonly mediaType: 'image/png' | 'image/jpeg' | 'image/webp';
  readonly widthPx: number;
  readonly heightPx: number;
  readonly placement: PicturePlacement;
  readonly attribution: string;
  /** How well a corner is pointed at on it, one standard deviation; null = one of its pixels. */
  readonly cornerSigmaM: number | null;
  /** Relative standard deviation of its scale as the person states it; null = as its known lengths say. */
  readonly scaleSigma: number | null;
}

/** A length on the ground between two pixels of a picture. */
export interface KnownLength {
  readonly fromPx: PicturePoint;
  readonly toPx: PicturePoint;
  readonly lengthM: number;
}

/** Corners in the yard, in the order north-west, north-east, south-east, south-west of the picture itself. */
export type PictureCorners = readonly [YardPoint, YardPoint, YardPoint, YardPoint];

export type PicturePlacement =
  /** No scale yet: shown for scaling only; nothing traced over it has an area. */
  | { readonly kind: 'unscaled' }
  /** Scaled by known lengths, at least one, by least squares. */
  | {
      readonly kind: 'scaled';
      readonly lengths: readonly KnownLength[];
      readonly corners: PictureCorners;
    }
  /** Knew where it was; `crs` is as the file named it, e.g. 'EPSG:26913'. */
  | { readonly kind: 'georeferenced'; readonly crs: string; readonly corners: PictureCorners };

export const CUT_OUT_KINDS = ['bed', 'hardscape', 'building', 'water', 'tree'] as const;
export const OUTLINE_KINDS = ['zone', ...CUT_OUT_KINDS, 'keep-off', 'check-plot'] as const;
export type CutOutKind = (typeof CUT_OUT_KINDS)[number];
export type OutlineKind = (typeof OUTLINE_KINDS)[number];

/** How an edge runs from its corner to the next: round an arc through a point of it, or smoothly with its neighbours. */
export type EdgeRun = { readonly kind: 'arc'; readonly via: YardPoint } | { readonly kind: 'smooth' };

/** A corner as placed, and what is said of the edge from it to the next corner. */
export interface TracedCorner extends YardPoint {
  /** Absent = straight. */
  readonly run?: EdgeRun;
  /** Width of the strip kept off along this edge; absent = none. */
  readonly keepOffM?: number;
}

/**
 * A closed edge as the person placed it. What ground it holds is `tracedRing`'s answer (core/curves): curves are
 * kept as traced and only turned into corners to be computed with.
 */
export type Traced =
  | { readonly kind: 'corners'; readonly corners: readonly TracedCorner[] }
  | { readonly kind: 'circle'; readonly centre: YardPoint; readonly radiusM: number }
  | {
      readonly kind: 'ellipse';
      readonly centre: YardPoint;
      readonly halfLengthM: number;
      readonly halfWidthM: number;
      /** Compass bearing of the length. */
      readonly bearingDeg: number;
    };

export const PLACED_BY = ['hand', 'picture', 'tape', 'gps'] as const;

/** How an outline's corners were found, which says how sure they are. */
export interface Placing {
  readonly by: (typeof PLACED_BY)[number];
  /** The picture traced over: an error of its scale is common to all that was traced over it. */
  readonly pictureId: string | null;
  /** One standard deviation of a corner; null = as its picture says, else as the yard says, but by GPS not stated. */
  readonly sigmaM: number | null;
}

/** How a zone's ground slopes: one grade (rise over run), or the facets of an elevation grid. */
export type Slope =
  | { readonly kind: 'grade'; readonly grade: number }
  | { readonly kind: 'elevation'; readonly elevationId: string };

/** Anything drawn with an edge. Holes come only from imported shapes and are kept as drawn. */
export interface Outline {
  readonly id: string;
  readonly kind: OutlineKind;
  readonly name: string;
  readonly outer: Traced;
  readonly holes: readonly Traced[];
  readonly placing: Placing;
  /** Width of the strip kept off all round it; null = none. */
  readonly keepOffM: number | null;
  /** Of a zone; null = taken as level. */
  readonly slope: Slope | null;
  /** Of a zone: it owns the ground it shares with others, whatever the yard's rule. */
  readonly claimsOverlaps: boolean;
  /** Whether a hose has to go round it; null = as is usual for its kind. */
  readonly blocksHose: boolean | null;
}

/** Heights of the ground at the nodes of a grid that lies in the yard by the corners of its outermost nodes. */
export interface Elevation {
  readonly id: string;
  readonly name: string;
  readonly columns: number;
  readonly rows: number;
  /** Places of the nodes north-west, north-east, south-east, south-west. */
  readonly corners: PictureCorners;
  /** Millimetres, row after row from the north, west to east; null where the file has no height. */
  readonly heightsMm: readonly (number | null)[];
}

/** A distance taped on the ground between two places of the map, to hold the map against. */
export interface FieldCheck {
  readonly id: string;
  readonly name: string;
  readonly from: YardPoint;
  readonly to: YardPoint;
  readonly tapedM: number;
}

export const MARK_KINDS = ['spigot', 'landmark'] as const;
export type MarkKind = (typeof MARK_KINDS)[number];

export interface Mark {
  readonly id: string;
  readonly kind: MarkKind;
  readonly name: string;
  readonly at: YardPoint;
}

/** What a label says of one liquid product. Rates are volume of product per ground area. */
export interface Product {
  readonly id: string;
  readonly name: string;
  readonly use: 'fertilizer' | 'pesticide' | 'other';
  readonly rateLPerM2: number;
  /** The most the label allows in one application; null = the label states none. */
  readonly mostRateLPerM2: number | null;
  /** The least carrier the label asks for; null = the label states none. */
  readonly leastCarrierLPerM2: number | null;
}

/**
 * hose-end: the bottle holds undiluted product, `capacityL` is the bottle; the hose brings the carrier.
 * tank: the tank holds carrier and product together, `capacityL` is the whole mix.
 */
export interface Applicator {
  readonly id: string;
  readonly name: string;
  readonly kind: 'hose-end' | 'tank';
  readonly capacityL: number;
  readonly carrierLPerM2: number;
  readonly swathM: number;
  readonly paceMPerS: number;
  /** Length of one step at that pace, so that a pass can be counted out. */
  readonly stepM: number;
}

export type SectionPolicy = 'even' | 'fewest';

/** A cut line the person keeps in place, from edge to edge of one zone's ground; the others find their place round it. */
export interface HeldCut {
  readonly id: string;
  readonly zoneId: string;
  readonly from: YardPoint;
  readonly to: YardPoint;
}

/** Which way the lanes run, as compass bearings in degrees. */
export type LaneHeading =
  /** The plan picks the one with the least walking. */
  | { readonly kind: 'best' }
  | { readonly kind: 'picked'; readonly deg: number }
  /** Turned from last time's, so that wheels and swaths do not follow the same lines again. */
  | { readonly kind: 'turned'; readonly lastDeg: number; readonly byDeg: 45 | 90 };

/** The hose of a job. `spigotIds` null = any spigot of the yard. */
export interface JobHose {
  readonly lengthM: number;
  readonly spigotIds: readonly string[] | null;
  /** How far it keeps from the corners it is laid round. */
  readonly clearanceM: number;
}

/** Zones to be treated with one product from one applicator. `zoneIds` null = every zone. */
export interface Job {
  readonly id: string;
  readonly name: string;
  readonly zoneIds: readonly string[] | null;
  readonly productId: string;
  readonly applicatorId: string;
  readonly policy: SectionPolicy;
  readonly heading: LaneHeading;
  /** 2 = walked twice at half the rate, the second time square to the first. */
  readonly rounds: 1 | 2;
  readonly heldCuts: readonly HeldCut[];
  /** Where the person comes from and wants to end; null = wherever it suits the walk. */
  readonly startAt: YardPoint | null;
  readonly finishAt: YardPoint | null;
  /** null = no hose is dragged. */
  readonly hose: JobHose | null;
}
