import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import { sum } from '../units/index.ts';
import type { KnownLength, Picture } from '../yard.ts';

/**
 * One standard deviation of a taped length from its two ends, held by hand against a corner and a mark in the grass.
 * Common practice, no source. Stretch and sag, 1 mm in 10 m, are left out here: far below what pointing adds.
 */
export const TAPE_ENDS_SIGMA_M = 0.01;

/** One known length against the scale found from all of them. */
export interface LengthFit {
  readonly lengthM: number;
  /** What the picture makes it. */
  readonly onPictureM: number;
  /** On the picture less as measured: above zero where the picture makes it too long. */
  readonly residualM: number;
  /** The residual as a part of the length. */
  readonly relative: number;
  /** What the other lengths alone make it; null when there are none. */
  readonly byOthersM: number | null;
}

/** The scale of a picture and how well its known lengths agree on it. */
export interface ScaleFit {
  readonly metresPerPx: number;
  /** Relative standard deviation of the scale. */
  readonly sigma: number;
  /** In the order of the lengths given. */
  readonly lengths: readonly LengthFit[];
  /** The one the others speak against most; null below three, where nobody can say which one is wrong. */
  readonly worst: number | null;
}

/**
 * The scale from known lengths L_i that are p_i pixels long, by least squares.
 *
 * Each end is pointed at with an error of `pointingM` (one pixel where null) along the length, and the tape has its
 * own, so the misfit L_i - s p_i has the variance v = 2 pointing² + tape². It is the same for every length, so the
 * weights drop out of the least of Σ(L_i - s p_i)²/v and no iteration is needed:
 *   s = Σ L_i p_i / Σ p_i²,    σ_s / s = √v / √Σ(s p_i)²,
 * for one length √v/L. With more, v is raised by χ²/(n-1) where that is above 1: lengths that disagree by more than
 * pointing and tape explain tell of a skewed picture or a misread tape. (Derived here; the errors of p_i move s by
 * their square only, far below σ_s.)
 *
 * Which length is the worst: leaving length i out lowers Σ(L - s p)² by r_i² / (1 - p_i²/Σp²), so the largest of
 * these is taken. For two lengths both are equal, hence `worst` null.
 *
 * Problems: value/missing with no length, value/not-positive for one that is not above 0, value/no-scale when both
 * ends are one pixel
 */
export function fitScale(lengths: readonly KnownLength[], pointingM: number | null): Result<ScaleFit> {
  const where = { field: 'known length' };
  if (lengths.length === 0) return trouble({ kind: 'value/missing', where, facts: {} });
  const pixels = lengths.map(({ fromPx, toPx }) => Math.hypot(toPx.xPx - fromPx.xPx, toPx.yPx - fromPx.yPx));
  if (!lengths.every(({ lengthM }) => lengthM > 0 && lengthM < Infinity)) {
    return trouble({ kind: 'value/not-positive', where, facts: {} });
  }
  if (!pixels.every((px) => px > 0 && px < Infinity)) {
    return trouble({ kind: 'value/no-scale', where, facts: {} });
  }
  const sumLp = sum(lengths.map(({ lengthM }, i) => lengthM * (pixels[i] ?? 0)));
  const sumPp = sum(pixels.map((px) => px * px));
  const metresPerPx = sumLp / sumPp;
  const byOthers = (i: number): number | null => {
    const [lengthM, px] = [lengths[i]?.lengthM ?? 0, pixels[i] ?? 0];
    return lengths.length < 2 ? null : (px * (sumLp - lengthM * px)) / (sumPp - px * px);
  };
  const fits = lengths.map(({ lengthM }, i) => {
    const onPictureM = metresPerPx * (pixels[i] ?? 0);
    const residualM = onPictureM - lengthM;
    return { lengthM, onPictureM, residualM, relative: residualM / lengthM, byOthersM: byOthers(i) };
  });
  const variance = 2 * (pointingM ?? metresPerPx) ** 2 + TAPE_ENDS_SIGMA_M ** 2;
  const squares = sum(fits.map(({ residualM }) => residualM ** 2));
  const reduced = fits.length < 2 ? 1 : squares / variance / (fits.length - 1);
  const sigma = Math.sqrt((variance * Math.max(1, reduced)) / sumPp) / metresPerPx;
  const gains = fits.map(({ residualM }, i) => residualM ** 2 / (1 - (pixels[i] ?? 0) ** 2 / sumPp));
  const most = gains.indexOf(Math.max(...gains));
  return ok({
    metresPerPx,
    sigma,
    lengths: fits,
    worst: fits.length < 3 ? null : most,
  });
}

/** A length this far, as a part of itself, from what the others make it was misread, not badly pointed at. */
const WILD = 0.1;

/** The length that cannot be right by the others, where there is one: the worst, or of two the one given last. */
export function lengthsDisagree({ name, placement, cornerSigmaM }: Picture): Problem | undefined {
  if (placement.kind !== 'scaled') return undefined;
  const fit = fitScale(placement.lengths, cornerSigmaM);
  const worst = fit.ok ? fit.value.lengths[fit.value.worst ?? fit.value.lengths.length - 1] : undefined;
  if (worst === undefined || worst.byOthersM === null) return undefined;
  const { lengthM, byOthersM } = worst;
  if (Math.abs(byOthersM / lengthM - 1) <= WILD) return undefined;
  return { kind: 'value/lengths-disagree', where: { field: name }, facts: { lengthM, byOthersM } };
}

/**
 * Relative standard deviation of a picture's scale, common to all that is traced over it: as the person stated it,
 * else from its known lengths (see `fitScale`; its stated corner accuracy, else one pixel, is the pointing error).
 * null for a picture without a scale, and for one that knows where it is and says nothing of its scale.
 */
export function pictureScaleSigma(picture: Picture): number | null {
  const { placement, scaleSigma, cornerSigmaM } = picture;
  if (placement.kind === 'unscaled') return null;
  if (scaleSigma !== null) return scaleSigma;
  if (placement.kind === 'georeferenced') return null;
  const fit = fitScale(placement.lengths, cornerSigmaM);
  return fit.ok ? fit.value.sigma : null;
}

/** The side of a square of ground as large as one of the picture's pixels, in metres; null without a scale. */
export function pixelSizeM({ placement, widthPx, heightPx }: Picture): number | null {
  if (placement.kind === 'unscaled') return null;
  const [a, b, c, d] = placement.corners;
  // A four-sided area from its diagonals.
  const twiceM2 = (c.xM - a.xM) * (d.yM - b.yM) - (d.xM - b.xM) * (c.yM - a.yM);
  return Math.sqrt(Math.abs(twiceM2) / 2 / (widthPx * heightPx));
}
