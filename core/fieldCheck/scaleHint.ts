import type { CheckedDistance } from './fieldCheck.ts';

/** What all taped distances together say of the map's scale. */
export interface ScaleHint {
  readonly checks: number;
  /** True length over the map's: 1.018 when the map is 1.8 % too short. */
  readonly ratio: number;
  /** One standard deviation of the ratio, wider where the checks disagree; null when an accuracy is not stated. */
  readonly ratioSigma: number | null;
  /** All tapes longer, or all shorter, than the map. */
  readonly oneWay: boolean;
  /** Whether the ratio is more than two standard deviations off 1; null when that cannot be told. */
  readonly isOff: boolean | null;
  /** Whether one scale fits them all; null when that cannot be told. */
  readonly fits: boolean | null;
  /** Share by which true areas are larger than the map's if the scale is what is wrong. */
  readonly areaShare: number;
}

const OFF_SIGMAS = 2;
/** χ² of n − 1 has the mean n − 1 and the standard deviation √(2 (n − 1)); beyond so many of them it does not fit. */
const MISFIT_SIGMAS = 3;

/**
 * The one scale that fits all taped distances best, through zero.
 *
 * @returns undefined with fewer than two checks that can be held against the map
 * Source: weighted least squares of taped = k × map: k = Σ(t·m/σ²) / Σ(m²/σ²), σ_k = 1/√Σ(m²/σ²), with σ that of
 * each difference without the scale's own share, which is what is looked for; σ_k is raised by √(χ²/(n − 1)) where
 * that is above 1. Areas go as k². Neglects that
 * two distances from one corner share its error.
 */
export function scaleHint(checked: readonly CheckedDistance[]): ScaleHint | undefined {
  const usable = checked.filter(({ endsFound, mapM }) => endsFound && mapM > 0);
  if (usable.length < 2) return undefined;
  const stated = usable.every(({ pointingSigmaM }) => pointingSigmaM !== null);
  let [across, own] = [0, 0];
  for (const { mapM, check, pointingSigmaM } of usable) {
    const weight = stated ? 1 / (pointingSigmaM ?? 1) ** 2 : 1;
    across += weight * check.tapedM * mapM;
    own += weight * mapM * mapM;
  }
  const ratio = across / own;
  const free = usable.length - 1;
  const chi2 = usable.reduce((sum, { mapM, check, pointingSigmaM }) => {
    return sum + ((check.tapedM - ratio * mapM) / (pointingSigmaM ?? 1)) ** 2;
  }, 0);
  const ratioSigma = stated ? Math.sqrt(Math.max(1, chi2 / free) / own) : null;
  return {
    checks: usable.length,
    ratio,
    ratioSigma,
    oneWay: new Set(usable.map(({ differenceM }) => Math.sign(differenceM))).size === 1,
    isOff: ratioSigma === null ? null : Math.abs(ratio - 1) > OFF_SIGMAS * ratioSigma,
    fits: stated ? chi2 <= free + MISFIT_SIGMAS * Math.sqrt(2 * free) : null,
    areaShare: ratio * ratio - 1,
  };
}
