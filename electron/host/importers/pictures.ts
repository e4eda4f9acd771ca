import { createHash } from 'node:crypto';
import { lonLatToYard } from '../../../core/earth/index.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import { ok, type Result, trouble } from '../../../core/result.ts';
import type { LonLat } from '../../../core/spaces.ts';
import type { NewImage } from '../../../core/yardFile/index.ts';
import type { Picture, PictureCorners } from '../../../core/yard.ts';
import type { FileKind } from './fileKind.ts';
import { type DecodedTiff, MOST_TIFF_PIXELS } from './geoTiff/decodeGeoTiff.ts';
import { readGeoTiff } from './geoTiff/readGeoTiff.ts';
import { tiffGlobe } from './geoTiff/tiffGlobe.ts';
import { nameFromFile } from './firstGuesses.ts';
import { readPictureSize } from './pictureSize.ts';
import { checkReach } from './reach.ts';

/** A picture ready to be a row of a yard, but for its id and, on the globe, its place in the frame. */
export interface BroughtPicture {
  readonly picture: Omit<Picture, 'id' | 'placement'>;
  readonly image: NewImage;
  /** Null for a plain picture. Corners in the order of `PictureCorners`. */
  readonly place: { readonly crs: string; readonly corners: Four<LonLat> } | null;
  readonly notes: readonly string[];
}

/** An elevation grid as it was read, not yet in any yard. */
export type BroughtHeights = DecodedTiff & { readonly kind: 'heights' };

type Four<T> = readonly [T, T, T, T];

const MOST_PICTURE_BYTES = 256_000_000;
/** A plain picture is shown as it is and never unpacked here; beyond this a window refuses to draw it. */
const MOST_PLAIN_PIXELS = 120_000_000;

const MEDIA_TYPES = { png: 'image/png', jpeg: 'image/jpeg', webp: 'image/webp' } as const;

/**
 * A PNG, JPEG or WebP, kept as it is; it has no scale until a person gives it one.
 * Problems: file/too-large, file/too-many-pixels, file/unreadable
 */
export function readPlainPicture(
  fileName: string,
  kind: Exclude<FileKind, 'tiff' | 'geojson'>,
  bytes: Uint8Array,
): Result<BroughtPicture> {
  const where = { fileName };
  if (bytes.byteLength > MOST_PICTURE_BYTES) return tooLarge(fileName, bytes);
  const read = readPictureSize(kind, bytes);
  if (read.size === null) return trouble({ kind: 'file/unreadable', where, facts: { detail: read.detail } });
  const { size } = read;
  if (size.widthPx * size.heightPx > MOST_PLAIN_PIXELS) {
    return trouble({ kind: 'file/too-many-pixels', where, facts: { ...size, mostPx: MOST_PLAIN_PIXELS } });
  }
  const mediaType = MEDIA_TYPES[kind];
  return ok({ ...pictureRow(fileName, mediaType, size, bytes), place: null, notes: [] });
}

/**
 * A GeoTIFF: a picture, decoded and packed anew as PNG, with its corners put through its coordinate system; or the
 * heights of an elevation grid, still in its own.
 * Problems: file/too-large, file/too-many-pixels, file/unreadable, file/no-georeference, file/unknown-crs
 */
export async function readTiff(
  fileName: string,
  bytes: Uint8Array,
): Promise<Result<BroughtPicture | BroughtHeights>> {
  const where = { fileName };
  if (bytes.byteLength > MOST_PICTURE_BYTES) return tooLarge(fileName, bytes);
  const decoded = await readGeoTiff(bytes);
  switch (decoded.kind) {
    case 'unreadable':
      return trouble({ kind: 'file/unreadable', where, facts: { detail: decoded.detail } });
    case 'no-place':
      return trouble({ kind: 'file/no-georeference', where, facts: {} });
    case 'too-many-pixels': {
      const { widthPx, heightPx } = decoded;
      const facts = { widthPx, heightPx, mostPx: MOST_TIFF_PIXELS };
      return trouble({ kind: 'file/too-many-pixels', where, facts });
    }
    case 'heights':
      return ok(decoded);
    case 'picture':
      return placed(fileName, decoded);
  }
}

/** Where a picture's corners lie in a yard, and the size of its larger pixel side there. */
export function cornersInYard(
  fileName: string,
  { picture, place }: BroughtPicture & { readonly place: object },
  origin: LonLat,
): Result<{ readonly corners: PictureCorners; readonly pixelM: number }> {
  const corners = place.corners.map((corner) => lonLatToYard(origin, corner)) as unknown as PictureCorners;
  const reach = checkReach(fileName, corners);
  if (!reach.ok) return reach;
  const [northWest, northEast, , southWest] = corners;
  const pixelM = Math.max(
    distanceM(northWest, northEast) / picture.widthPx,
    distanceM(northWest, southWest) / picture.heightPx,
  );
  return ok({ corners, pixelM });
}

function placed(fileName: string, tiff: DecodedTiff & { readonly kind: 'picture' }): Result<BroughtPicture> {
  const { widthPx, heightPx, png, place, notes } = tiff;
  const where = { fileName };
  const globe = tiffGlobe(place, fileName);
  if (globe === null) return trouble({ kind: 'file/unknown-crs', where, facts: { crs: place.crsName } });
  const [a, b, c, d, e, f] = place.affine;
  const corner = (px: number, py: number): LonLat => {
    const [x, y] = [a * px + b * py + c, d * px + e * py + f];
    // The projection library throws on what is not finite; such a corner is refused below with the others.
    return Number.isFinite(x) && Number.isFinite(y) ? globe.toLonLat(x, y) : { lonDeg: x, latDeg: y };
  };
  const corners: Four<LonLat> = [
    corner(0, 0),
    corner(widthPx, 0),
    corner(widthPx, heightPx),
    corner(0, heightPx),
  ];
  const isOnEarth = corners.every(({ lonDeg, latDeg }) => Math.abs(lonDeg) <= 360 && Math.abs(latDeg) <= 90);
  if (!isOnEarth) {
    const facts = { feature: 'its corners', swappedLikely: false };
    return trouble({ kind: 'file/coordinates-out-of-range', where, facts });
  }
  const row = pictureRow(fileName, 'image/png', { widthPx, heightPx }, png);
  return ok({ ...row, place: { crs: place.crsName, corners }, notes });
}

function pictureRow(
  fileName: string,
  mediaType: Picture['mediaType'],
  size: { readonly widthPx: number; readonly heightPx: number },
  bytes: Uint8Array,
): Pick<BroughtPicture, 'picture' | 'image'> {
  const imageHash = createHash('sha256').update(bytes).digest('hex');
  const picture = {
    name: nameFromFile(fileName),
    imageHash,
    mediaType,
    ...size,
    attribution: '',
    cornerSigmaM: null,
    scaleSigma: null,
  };
  return { picture, image: { imageHash, mediaType, bytes } };
}

function tooLarge(fileName: string, bytes: Uint8Array): Result<never> {
  const facts = { bytes: bytes.byteLength, mostBytes: MOST_PICTURE_BYTES };
  return trouble({ kind: 'file/too-large', where: { fileName }, facts });
}
