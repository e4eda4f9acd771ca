import { pictureScaleSigma, pixelSizeM } from '../frame/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Outline, Picture, Placing, Yard, YardDetails } from '../yard.ts';
import type { PlacedPoint } from './placedPoints.ts';
import { sharedPoints } from './sharedPoints.ts';

/** The part of a yard that says how sure its points are. */
export interface SurenessGround extends Pick<Yard, 'outlines' | 'pictures'> {
  readonly details: Pick<YardDetails, 'cornerSigmaM'>;
}

/** What says how sure a point is: its outline, the picture it was traced over or one pixel of it, the yard. */
export type StatedBy = 'outline' | 'picture' | 'pixel' | 'yard';

/** How sure the points of one outline are. */
export interface PointBase {
  readonly by: StatedBy;
  /** One standard deviation of a point, east and north alike; null = not stated by anything. */
  readonly sigmaM: number | null;
  /** The picture whose scale they share. */
  readonly scale: PictureScale | null;
}

export interface PictureScale {
  readonly pictureId: string;
  /** Relative standard deviation; null = not stated. */
  readonly sigma: number | null;
  /** What a wrong scale leaves in place: the middle of the picture. */
  readonly centre: YardPoint;
}

/** How sure every point of a yard is. */
export interface Sureness {
  /** By the outline a point is of; null = the end of a cut line, which is as sure as the yard says. */
  readonly baseOf: (outlineId: string | null) => PointBase;
  /** For a point at whose place there are others, the surest of them all: they are one point. */
  readonly surest: ReadonlyMap<PlacedPoint, PlacedPoint>;
}

/** How sure a yard's points are. A sigma of nought is never true and counts as not stated. */
export function surenessOf(ground: SurenessGround): Sureness {
  const { outlines, details } = ground;
  const scales = new Map(ground.pictures.map((picture) => [picture.id, scaleOf(picture)]));
  const pictures = new Map(ground.pictures.map((picture) => [picture.id, picture]));
  const bases = new Map(
    outlines.map(({ id, placing }) => {
      const picture = placing.by === 'picture' ? pictures.get(placing.pictureId ?? '') : undefined;
      const scale = picture === undefined ? null : (scales.get(picture.id) ?? null);
      const { by, sigmaM } = sigmaBase(placing.sigmaM, picture, yardSigmaM(placing, details));
      return [id, { by, sigmaM, scale }] as const;
    }),
  );
  const ofYard: PointBase = { ...sigmaBase(null, undefined, details.cornerSigmaM), scale: null };
  const baseOf = (outlineId: string | null): PointBase => bases.get(outlineId ?? '') ?? ofYard;
  return { baseOf, surest: surestOf(outlines, baseOf) };
}

/** The base of one outline's points alone. */
export function pointBaseOf(
  outline: Pick<Outline, 'placing'>,
  ground: Omit<SurenessGround, 'outlines'>,
): PointBase {
  const { placing } = outline;
  const picture =
    placing.by === 'picture' ? ground.pictures.find(({ id }) => id === placing.pictureId) : undefined;
  const base = sigmaBase(placing.sigmaM, picture, yardSigmaM(placing, ground.details));
  return { ...base, scale: picture === undefined ? null : scaleOf(picture) };
}

/** What the yard says holds for a hand on the map; a receiver is out by metres, as much as it says itself or nobody knows. */
function yardSigmaM({ by }: Placing, { cornerSigmaM }: SurenessGround['details']): number | null {
  return by === 'gps' ? null : cornerSigmaM;
}

function sigmaBase(
  ofOutlineM: number | null,
  picture: Picture | undefined,
  ofYardM: number | null,
): Pick<PointBase, 'by' | 'sigmaM'> {
  const own = stated(ofOutlineM);
  if (own !== null) return { by: 'outline', sigmaM: own };
  const ofPicture = stated(picture?.cornerSigmaM ?? null);
  if (ofPicture !== null) return { by: 'picture', sigmaM: ofPicture };
  const pixel = picture === undefined ? null : stated(pixelSizeM(picture));
  if (pixel !== null) return { by: 'pixel', sigmaM: pixel };
  return { by: 'yard', sigmaM: stated(ofYardM) };
}

/** In metres, or as a part of a scale: what is as sure as that says nothing of a yard, which is smaller. */
const MOST_SIGMA = 1e4;

/** Written so that NaN is not stated either. */
function stated(sigma: number | null): number | null {
  return sigma !== null && sigma > 0 && sigma < MOST_SIGMA ? sigma : null;
}

function scaleOf(picture: Picture): PictureScale {
  const scaleSigma = stated(picture.scaleSigma);
  const { placement } = picture;
  const corners = placement.kind === 'unscaled' ? [] : placement.corners;
  const mean = (of: (corner: YardPoint) => number): number =>
    corners.reduce((sum, corner) => sum + of(corner), 0) / Math.max(1, corners.length);
  return {
    pictureId: picture.id,
    sigma: stated(pictureScaleSigma({ ...picture, scaleSigma })),
    centre: { xM: mean(({ xM }) => xM), yM: mean(({ yM }) => yM) },
  };
}

function surestOf(
  outlines: readonly Outline[],
  baseOf: (outlineId: string | null) => PointBase,
): ReadonlyMap<PlacedPoint, PlacedPoint> {
  const sigmaM = (point: PlacedPoint): number => baseOf(point.outlineId).sigmaM ?? Infinity;
  return new Map(
    sharedPoints(outlines).flatMap((group) => {
      const surest = group.reduce((best, point) => (sigmaM(point) < sigmaM(best) ? point : best));
      return group.map((point) => [point, surest] as const);
    }),
  );
}
