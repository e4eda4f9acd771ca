import { z } from 'zod';
import type { Change, Edit, YardPart, YardRows } from '../../core/edits/index.ts';
import {
  MARK_KINDS,
  OUTLINE_KINDS,
  OVERLAP_RULES,
  PLACED_BY,
  type Traced,
  type Yard,
} from '../../core/yard.ts';

/**
 * Shapes of the yard and of an edit. Numbers are finite, members that are not listed are refused, and the
 * caps lie far above any yard that can be drawn or brought in: they stop a request made to fill the memory.
 */
const MOST_CORNERS = 500_000;
const MOST_RINGS = 50_000;
const MOST_ROWS = 50_000;
const MOST_IMAGES = 100;
const MOST_LENGTHS = 1_000;
const MOST_HEIGHTS = 1_000_000;

/** Text of at most `most` UTF-16 units, with no half of a surrogate pair (a file could not keep it). */
export function textUpTo(most: number): z.ZodString {
  return z
    .string()
    .max(most)
    .refine((value) => !/\p{Surrogate}/u.test(value), 'holds half a character');
}

const idText = textUpTo(200).min(1);
const nameText = textUpTo(1_000);
export const longText = textUpTo(10_000);
const finite = z.number();
const isoDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const hash = z.string().regex(/^[0-9a-f]{64}$/);

const yardPoint = z.strictObject({ xM: finite, yM: finite });
const picturePoint = z.strictObject({ xPx: finite, yPx: finite });
const corners = z.tuple([yardPoint, yardPoint, yardPoint, yardPoint]);

const frame = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('placed'),
    origin: z.strictObject({
      lonDeg: finite.min(-180).max(180),
      latDeg: finite.min(-90).max(90),
    }),
  }),
  z.strictObject({ kind: z.literal('loose') }),
]);

const placement = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('unscaled') }),
  z.strictObject({
    kind: z.literal('scaled'),
    lengths: z
      .array(z.strictObject({ fromPx: picturePoint, toPx: picturePoint, lengthM: finite }))
      .max(MOST_LENGTHS),
    corners,
  }),
  z.strictObject({ kind: z.literal('georeferenced'), crs: nameText, corners }),
]);

const edgeRun = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('arc'), via: yardPoint }),
  z.strictObject({ kind: z.literal('smooth') }),
]);

const tracedCorner = z.strictObject({
  xM: finite,
  yM: finite,
  run: edgeRun.optional(),
  keepOffM: finite.optional(),
});

const traced = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('corners'), corners: z.array(tracedCorner).max(MOST_CORNERS) }),
  z.strictObject({ kind: z.literal('circle'), centre: yardPoint, radiusM: finite }),
  z.strictObject({
    kind: z.literal('ellipse'),
    centre: yardPoint,
    halfLengthM: finite,
    halfWidthM: finite,
    bearingDeg: finite,
  }),
]) as z.ZodType<Traced>;

const slope = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('grade'), grade: finite }),
  z.strictObject({ kind: z.literal('elevation'), elevationId: idText }),
]);

const laneHeading = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('best') }),
  z.strictObject({ kind: z.literal('picked'), deg: finite }),
  z.strictObject({
    kind: z.literal('turned'),
    lastDeg: finite,
    byDeg: z.union([z.literal(45), z.literal(90)]),
  }),
]);

/** One row of each part of a yard. */
const ROWS: { readonly [P in YardPart]: z.ZodType<YardRows[P]> } = {
  details: z.strictObject({
    id: z.literal('yard'),
    name: nameText,
    groundDate: isoDate,
    unitSystem: z.enum(['us', 'metric']),
    frame,
    cornerSigmaM: finite.nullable(),
    overlapRule: z.enum(OVERLAP_RULES),
    amountsBy: z.enum(['plan', 'surface']),
  }),
  pictures: z.strictObject({
    id: idText,
    name: nameText,
    imageHash: hash,
    mediaType: z.enum(['image/png', 'image/jpeg', 'image/webp']),
    widthPx: z.int().positive(),
    heightPx: z.int().positive(),
    placement,
    attribution: longText,
    cornerSigmaM: finite.nullable(),
    scaleSigma: finite.nullable(),
  }),
  outlines: z.strictObject({
    id: idText,
    kind: z.enum(OUTLINE_KINDS),
    name: nameText,
    outer: traced,
    holes: z.array(traced).max(MOST_RINGS),
    placing: z.strictObject({
      by: z.enum(PLACED_BY),
      pictureId: textUpTo(200).nullable(),
      sigmaM: finite.nullable(),
    }),
    keepOffM: finite.nullable(),
    slope: slope.nullable(),
    claimsOverlaps: z.boolean(),
    blocksHose: z.boolean().nullable(),
  }),
  marks: z.strictObject({ id: idText, kind: z.enum(MARK_KINDS), name: nameText, at: yardPoint }),
  elevations: z
    .strictObject({
      id: idText,
      name: nameText,
      columns: z.int().min(2),
      rows: z.int().min(2),
      corners,
      heightsMm: z.array(z.int().nullable()).max(MOST_HEIGHTS),
    })
    .refine(({ columns, rows, heightsMm }) => columns * rows === heightsMm.length, 'does not fill its rows'),
  checks: z.strictObject({ id: idText, name: nameText, from: yardPoint, to: yardPoint, tapedM: finite }),
  products: z.strictObject({
    id: idText,
    name: nameText,
    use: z.enum(['fertilizer', 'pesticide', 'other']),
    rateLPerM2: finite,
    mostRateLPerM2: finite.nullable(),
    leastCarrierLPerM2: finite.nullable(),
  }),
  applicators: z.strictObject({
    id: idText,
    name: nameText,
    kind: z.enum(['hose-end', 'tank']),
    capacityL: finite,
    carrierLPerM2: finite,
    swathM: finite,
    paceMPerS: finite,
    stepM: finite,
  }),
  jobs: z.strictObject({
    id: idText,
    name: nameText,
    zoneIds: z.array(idText).max(MOST_ROWS).nullable(),
    productId: textUpTo(200),
    applicatorId: textUpTo(200),
    policy: z.enum(['even', 'fewest']),
    heading: laneHeading,
    rounds: z.union([z.literal(1), z.literal(2)]),
    heldCuts: z
      .array(z.strictObject({ id: idText, zoneId: idText, from: yardPoint, to: yardPoint }))
      .max(MOST_ROWS),
    startAt: yardPoint.nullable(),
    finishAt: yardPoint.nullable(),
    hose: z
      .strictObject({
        lengthM: finite,
        spigotIds: z.array(idText).max(MOST_ROWS).nullable(),
        clearanceM: finite,
      })
      .nullable(),
  }),
};

export const yardShape: z.ZodType<Yard> = z.strictObject({
  details: ROWS.details,
  pictures: rows('pictures'),
  outlines: rows('outlines'),
  marks: rows('marks'),
  elevations: rows('elevations'),
  checks: rows('checks'),
  products: rows('products'),
  applicators: rows('applicators'),
  jobs: rows('jobs'),
});

function rows<P extends YardPart>(part: P): z.ZodType<readonly YardRows[P][]> {
  return z.array(ROWS[part]).max(MOST_ROWS);
}

function changeShape<P extends YardPart>(part: P) {
  const row: z.ZodType<YardRows[P]> = ROWS[part];
  return z
    .strictObject({
      part: z.literal(part),
      id: idText,
      index: z.int().nonnegative(),
      before: row.nullable(),
      after: row.nullable(),
    })
    .refine((change) => change.before !== null || change.after !== null, 'has neither before nor after');
}

const change: z.ZodType<Change> = z.discriminatedUnion('part', [
  changeShape('details'),
  changeShape('pictures'),
  changeShape('outlines'),
  changeShape('marks'),
  changeShape('elevations'),
  changeShape('checks'),
  changeShape('products'),
  changeShape('applicators'),
  changeShape('jobs'),
]);

export const editShape: z.ZodType<Edit> = z.strictObject({
  label: nameText,
  changes: z.array(change).max(MOST_ROWS),
});

export const imageShape = z.strictObject({
  imageHash: hash,
  mediaType: z.enum(['image/png', 'image/jpeg', 'image/webp']),
  bytes: z.custom<Uint8Array>((value) => value instanceof Uint8Array, 'is not bytes'),
});

export const newImages = z.array(imageShape).max(MOST_IMAGES);
