import { type AreaSpread, sigmaOf } from './areaSpread.ts';
import type { PlacedPoint } from './placedPoints.ts';

/** What an area's error can be laid to: one point, the points of one outline together, or a picture's scale. */
export type Contributor =
  | { readonly kind: 'point'; readonly point: PlacedPoint }
  | { readonly kind: 'outline'; readonly outlineId: string | null; readonly points: number }
  | { readonly kind: 'scale'; readonly pictureId: string; readonly sigma: number };

/** What one cause has to do with an area's sigma. */
export interface Contribution {
  readonly of: Contributor;
  /** Of the area's variance, which is what independent errors add up in: from 0 to 1. */
  readonly share: number;
  /** What the area's sigma would be were this exact. */
  readonly sigmaWithoutM2: number;
}

/** Each point and each scale by itself, and each outline's points together; the most first. None where σ is not known. */
export function contributions(spread: AreaSpread): readonly Contribution[] {
  const sigmaM2 = sigmaOf(spread);
  if (sigmaM2 === null || sigmaM2 === 0) return [];
  const outlines = new Map<string | null, { points: number; variance: number }>();
  const single = spread.errors.map(
    ({ cause, sigma, eastM2, northM2 }): { of: Contributor; variance: number } => {
      const variance = eastM2 ** 2 + northM2 ** 2;
      if (typeof cause === 'string') return { of: { kind: 'scale', pictureId: cause, sigma }, variance };
      const sum = outlines.get(cause.outlineId) ?? { points: 0, variance: 0 };
      outlines.set(cause.outlineId, { points: sum.points + 1, variance: sum.variance + variance });
      return { of: { kind: 'point', point: cause }, variance };
    },
  );
  const whole = [...outlines].map(([outlineId, { points, variance }]) => ({
    of: { kind: 'outline', outlineId, points } as const,
    variance,
  }));
  return [...single, ...whole]
    .map(({ of, variance }) => ({
      of,
      share: Math.min(1, variance / sigmaM2 ** 2),
      sigmaWithoutM2: Math.sqrt(Math.max(0, sigmaM2 ** 2 - variance)),
    }))
    .sort((a, b) => b.share - a.share);
}

/** A point that makes less than this of the variance is not worth going out for by itself. */
const WORTH_A_WALK = 0.2;

/**
 * What would tighten an area most, if measured better: the one point or scale that contributes most, or where no point
 * stands out, the points of an outline together. Undefined where σ is not known.
 */
export function tightener(spread: AreaSpread): Contribution | undefined {
  const rows = contributions(spread);
  const of = (kind: Contribution['of']['kind']) => rows.find((row) => row.of.kind === kind);
  const [outline, point, scale] = [of('outline'), of('point'), of('scale')];
  const ofPoints = (point?.share ?? 0) >= WORTH_A_WALK ? point : outline;
  return (scale?.share ?? 0) > (ofPoints?.share ?? 0) ? scale : ofPoints;
}
