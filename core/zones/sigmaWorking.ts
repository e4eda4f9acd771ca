import {
  type AreaSpread,
  type Contribution,
  contributions,
  pointBaseOf,
  type StatedBy,
  surenessOf,
  tightener,
} from '../area/index.ts';
import { type OwnPoint, ownPoints } from '../curves/index.ts';
import type { Yard } from '../yard.ts';
import type { ResolvedZone } from './resolved.ts';

/** How one zone's ± comes about. In metres and square metres. */
export interface SigmaWorking {
  /** What makes it up, the most first: their squares add up to its square. */
  readonly parts: readonly SigmaPart[];
  /** Points that stand on several outlines and count once. */
  readonly sharedPoints: number;
  /** null where something is not stated. */
  readonly sigmaM2: number | null;
  /** Names of outlines of whose points nothing says how sure they are. */
  readonly unstated: readonly string[];
  /** Names of pictures traced over whose scale nothing is stated of: that is not in the ±. */
  readonly unstatedScales: readonly string[];
  /** What would tighten it most; null where it is not known. */
  readonly tightener: Tightener | null;
}

export type SigmaPart =
  | {
      readonly kind: 'points';
      readonly name: string;
      readonly points: number;
      readonly sigmaM: number;
      readonly by: StatedBy;
      /** Of the picture that says so. */
      readonly pictureName: string | null;
      readonly makesM2: number;
      readonly share: number;
    }
  | {
      readonly kind: 'scale';
      readonly pictureName: string;
      readonly sigma: number;
      readonly makesM2: number;
      readonly share: number;
    };

export type Tightener = {
  /** Of the square of the ±. */
  readonly share: number;
  /** What the ± would be were it exact. */
  readonly sigmaWithoutM2: number;
} & (
  | {
      readonly kind: 'point';
      readonly outlineId: string;
      readonly name: string;
      /** 0 = the outer edge, then the holes. */
      readonly ring: number;
      readonly point: OwnPoint;
    }
  | { readonly kind: 'outline'; readonly outlineId: string; readonly name: string; readonly points: number }
  | {
      readonly kind: 'scale';
      readonly pictureName: string;
      /** Whether it comes from known lengths, so that a longer one would help. */
      readonly isByLengths: boolean;
    }
);

/**
 * The working of a zone's ±, by outline and picture.
 *
 * Source: `areaSpread`, the errors of the resolved zone themselves
 */
export function sigmaWorking({ spread, sigmaM2 }: ResolvedZone, yard: Yard): SigmaWorking {
  const outlineName = nameIn(yard.outlines);
  const pictureName = nameIn(yard.pictures);
  const rows = contributions(spread);
  const most = tightener(spread);
  return {
    parts: rows.flatMap((row) => partOf(row, sigmaM2 ?? 0, yard)),
    sharedPoints: sharedPoints(spread, yard),
    sigmaM2,
    unstated: spread.unstated.map(outlineName),
    unstatedScales: spread.unstatedScales.map(pictureName),
    tightener: most === undefined ? null : tightenerOf(most, yard),
  };
}

function partOf({ of, share }: Contribution, sigmaM2: number, yard: Yard): readonly SigmaPart[] {
  const makesM2 = sigmaM2 * Math.sqrt(share);
  if (of.kind === 'point') return [];
  if (of.kind === 'scale') {
    const pictureName = nameIn(yard.pictures)(of.pictureId);
    return [{ kind: 'scale', pictureName, sigma: of.sigma, makesM2, share }];
  }
  const outline = yard.outlines.find(({ id }) => id === of.outlineId);
  if (outline === undefined) return [];
  const { by, sigmaM, scale } = pointBaseOf(outline, yard);
  if (sigmaM === null) return [];
  const pictureName =
    by === 'picture' || by === 'pixel' ? nameIn(yard.pictures)(scale?.pictureId ?? '') : null;
  return [{ kind: 'points', name: outline.name, points: of.points, sigmaM, by, pictureName, makesM2, share }];
}

function tightenerOf({ of, share, sigmaWithoutM2 }: Contribution, yard: Yard): Tightener | null {
  const rest = { share, sigmaWithoutM2 };
  if (of.kind === 'scale') {
    const picture = yard.pictures.find(({ id }) => id === of.pictureId);
    if (picture === undefined) return null;
    const isByLengths = picture.placement.kind === 'scaled' && !((picture.scaleSigma ?? 0) > 0);
    return { kind: 'scale', pictureName: picture.name, isByLengths, ...rest };
  }
  const outlineId = of.kind === 'point' ? of.point.outlineId : of.outlineId;
  const outline = yard.outlines.find(({ id }) => id === outlineId);
  if (outline === undefined) return null;
  const { id, name } = outline;
  if (of.kind === 'outline') return { kind: 'outline', outlineId: id, name, points: of.points, ...rest };
  const { ring, own } = of.point;
  const traced = [outline.outer, ...outline.holes][ring];
  const point = traced === undefined ? undefined : ownPoints(traced)[own];
  return point === undefined ? null : { kind: 'point', outlineId: id, name, ring, point, ...rest };
}

function sharedPoints({ errors }: AreaSpread, yard: Yard): number {
  const { surest } = surenessOf(yard);
  return errors.filter(({ cause }) => typeof cause !== 'string' && surest.has(cause)).length;
}

function nameIn(rows: readonly { readonly id: string; readonly name: string }[]): (id: string) => string {
  return (id) => rows.find((row) => row.id === id)?.name ?? '';
}
