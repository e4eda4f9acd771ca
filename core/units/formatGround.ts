import { FOOT_M, INCH_M, SQUARE_FOOT_M2 } from './constants.ts';
import { type Figure, joined } from './figure.ts';
import { formatNumber } from './formatNumber.ts';
import { areaStepM2 } from './plainUnits.ts';
import type { AreaUnit, LengthUnit } from './unitTables.ts';
import { otherUnits, type UnitSystem } from './unitSystem.ts';

/** Whole square feet, or square metres to one decimal. */
export function areaFigure(areaM2: number, units: UnitSystem): Figure<AreaUnit> {
  return units === 'us'
    ? { text: formatNumber(areaM2 / SQUARE_FOOT_M2, 0), unit: 'ft²' }
    : { text: formatNumber(areaM2, 1), unit: 'm²' };
}

/** "6,800 ft²" or "631.7 m²". */
export function formatArea(areaM2: number, units: UnitSystem): string {
  return joined(areaFigure(areaM2, units));
}

/** The person's units first, the other in brackets: "6,800 ft² (631.7 m²)". */
export function formatAreaBoth(areaM2: number, units: UnitSystem): string {
  return `${formatArea(areaM2, units)} (${formatArea(areaM2, otherUnits(units))})`;
}

/**
 * The uncertainty of an area at the same place value as the area itself. A sigma below half of the last place is
 * shown as one of that place, never as ± 0.
 */
export function areaSigmaFigure(sigmaM2: number, units: UnitSystem): Figure<AreaUnit> {
  const { text, unit } = areaFigure(sigmaM2 > 0 ? Math.max(sigmaM2, areaStepM2(units)) : 0, units);
  return { text: `± ${text}`, unit };
}

/** "± 56 ft²" or "± 5.2 m²". */
export function formatAreaSigma(sigmaM2: number, units: UnitSystem): string {
  return joined(areaSigmaFigure(sigmaM2, units));
}

/** Decimal feet to a tenth, or metres to a hundredth. */
export function lengthFigure(lengthM: number, units: UnitSystem): Figure<LengthUnit> {
  return units === 'us'
    ? { text: formatNumber(lengthM / FOOT_M, 1), unit: 'ft' }
    : { text: formatNumber(lengthM, 2), unit: 'm' };
}

/** "43.3 ft" or "13.20 m". */
export function formatLength(lengthM: number, units: UnitSystem): string {
  return joined(lengthFigure(lengthM, units));
}

/** A length that has to be enough, rounded up: whole feet or tenths of a metre, "62 ft", "18.9 m". */
export function formatEnough(lengthM: number, units: UnitSystem): string {
  const [stepM, decimals] = units === 'us' ? [FOOT_M, 0] : [0.1, 1];
  // What is a whole number of steps but for rounding is not another step longer.
  const steps = Math.ceil(lengthM / stepM - 1e-6);
  return joined({
    text: formatNumber(steps * (units === 'us' ? 1 : 0.1), decimals),
    unit: units === 'us' ? 'ft' : 'm',
  });
}

/** A length held against another: hundredths of a foot or of a metre, so that small differences show. */
export function fineLengthFigure(lengthM: number, units: UnitSystem): Figure<LengthUnit> {
  return units === 'us'
    ? { text: formatNumber(lengthM / FOOT_M, 2), unit: 'ft' }
    : { text: formatNumber(lengthM, 2), unit: 'm' };
}

/** A length as it is read off a tape: feet and whole inches, "12 ft 6 in", or metres to a hundredth. */
export function formatTape(lengthM: number, units: UnitSystem): string {
  if (units === 'metric') return formatLength(lengthM, units);
  const inches = Math.round(Math.abs(lengthM) / INCH_M);
  const sign = lengthM < 0 && inches > 0 ? '-' : '';
  return `${sign}${formatNumber(Math.floor(inches / 12), 0)} ft ${inches % 12} in`;
}

/** A compass bearing or an angle: "45°", "112.5°". */
export function formatAngle(angleDeg: number): string {
  const text = formatNumber(angleDeg, 1);
  return `${text.endsWith('.0') ? text.slice(0, -2) : text}°`;
}

/** A share of one as percent, to a tenth: 0.9963 is "99.6%". */
export function formatPercent(share: number): string {
  return `${formatNumber(share * 100, 1)}%`;
}
