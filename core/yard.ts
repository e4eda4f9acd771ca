import type { LonLat, PicturePoint, Ring, YardPoint } from './spaces.ts';
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
  /** Standard deviation of one hand-placed corner where no picture says otherwise; null = not stated. */
  readonly cornerSigmaM: number | null;
}

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
}

/** Corners in the yard, in the order north-west, north-east, south-east, south-west of the picture itself. */
export type PictureCorners = readonly [YardPoint, YardPoint, YardPoint, YardPoint];

export type PicturePlacement =
  /** No scale yet: shown for scaling only; nothing traced over it has an area. */
  | { readonly kind: 'unscaled' }
  /** Scaled by one known length between two pixels. */
  | {
      readonly kind: 'scaled';
      readonly fromPx: PicturePoint;
      readonly toPx: PicturePoint;
      readonly lengthM: number;
      readonly corners: PictureCorners;
    }
  /** Knew where it was; `crs` is as the file named it, e.g. 'EPSG:26913'. */
  | { readonly kind: 'georeferenced'; readonly crs: string; readonly corners: PictureCorners };

export const CUT_OUT_KINDS = ['bed', 'hardscape', 'building', 'water', 'tree'] as const;
export const OUTLINE_KINDS = ['zone', ...CUT_OUT_KINDS, 'keep-off', 'check-plot'] as const;
export type CutOutKind = (typeof CUT_OUT_KINDS)[number];
export type OutlineKind = (typeof OUTLINE_KINDS)[number];

/** Anything drawn with an edge. Rings are open; holes come only from imported shapes and are kept as drawn. */
export interface Outline {
  readonly id: string;
  readonly kind: OutlineKind;
  readonly name: string;
  readonly outer: Ring;
  readonly holes: readonly Ring[];
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
}

export type SectionPolicy = 'even' | 'fewest';

/** Zones to be treated with one product from one applicator. `zoneIds` null = every zone. */
export interface Job {
  readonly id: string;
  readonly name: string;
  readonly zoneIds: readonly string[] | null;
  readonly productId: string;
  readonly applicatorId: string;
  readonly policy: SectionPolicy;
  /** Compass bearing of the lanes in degrees, 0 = north; null = the plan picks it. */
  readonly headingDeg: number | null;
}
