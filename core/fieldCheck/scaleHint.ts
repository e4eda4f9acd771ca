import type { CheckedDistance } from './fieldCheck.ts';

/** What all taped distances together say of the map's scale. */
export interface ScaleHint {
  readonly checks: number;
  /** True length over the map's: 1.018 when the map is 1.8 % too short. */
  readonly ratio: number;
  /** One standard deviation of the ratio; null when an accuracy is not stated. */
  readonly ratioSigma: number | null;
  /** All tapes longer, or all shorter, than the map. */
  readonly oneWay: boolean;
  /** Whether the ratio is more than two standard deviations off 1; null when that cannot be told. */
  readonly isOff: boolean | null;
  /** Share by which true areas are larger than the map's if the scale is what is wrong. */
  readonly areaShare: number;
}

const OFF_SIGMAS = 2;

/**
 * The one scale that fits all taped distances best, through zero.
 *
 * @returns undefined with fewer than two checks that can be held against the map
 * Source: weighted least squares of taped = k × map: k = Σ(t·m/σ²) / Σ(m²/σ²), σ_k = 1/√Σ(m²/σ²), with σ that of
 * each difference without the scale's own share, which is what is looked for. Areas go as k². Neglects that
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
  const ratioSigma = stated ? 1 / Math.sqrt(own) : null;
  return {
    checks: usable.length,
    ratio,
    ratioSigma,
    oneWay: new Set(usable.map(({ differenceM }) => Math.sign(differenceM))).size === 1,
    isOff: ratioSigma === null ? null : Math.abs(ratio - 1) > OFF_SIGMAS * ratioSigma,
    areaShare: ratio * ratio - 1,
  };
}
