import { FLUID_OUNCE_L, GALLON_L } from './constants.ts';
import { type Figure, joined } from './figure.ts';
import { formatNumber, formatSignificant } from './formatNumber.ts';
import { RATE_UNITS, type RateUnit, SPEED_UNITS, type SpeedUnit, VOLUME_UNITS } from './unitTables.ts';
import type { UnitSystem } from './unitSystem.ts';

/**
 * Decimals printed for each unit a volume is shown in. From the volume on at which `volumeUnitFor` takes the
 * unit, half of its last digit is at most 5 %, the most a calibrated output may be off its label rate.
 * Source of the 5 %: UMass Amherst, Rotary Spreader Calibration Procedures; NC Cooperative Extension (Buhler).
 */
const VOLUME_DECIMALS = { tsp: 2, 'fl oz': 1, gal: 2, mL: 1, L: 2 } as const;
export type ShownVolumeUnit = keyof typeof VOLUME_DECIMALS;

/**
 * The unit a person measures such a volume in: teaspoons below a fluid ounce, fluid ounces below a gallon,
 * then gallons; millilitres below a litre, then litres. For a column of loads give the largest, so that the whole column has one unit.
 */
export function volumeUnitFor(largestL: number, units: UnitSystem): ShownVolumeUnit {
  if (units === 'us') return largestL < FLUID_OUNCE_L ? 'tsp' : largestL < GALLON_L ? 'fl oz' : 'gal';
  return largestL < 1 ? 'mL' : 'L';
}

/** The unit a tank's mix or the carrier is measured in, however little it is. */
export function carrierUnitFor(units: UnitSystem): ShownVolumeUnit {
  return units === 'us' ? 'gal' : 'L';
}

/** The smallest difference a printed volume shows, in litres: the step for `apportionForDisplay`. */
export function volumeStepL(unit: ShownVolumeUnit): number {
  return VOLUME_UNITS[unit] / 10 ** VOLUME_DECIMALS[unit];
}

/** A volume in a given unit; in the person's usual one when none is given. */
export function volumeFigure(
  volumeL: number,
  units: UnitSystem,
  unit: ShownVolumeUnit = volumeUnitFor(volumeL, units),
): Figure<ShownVolumeUnit> {
  return { text: formatNumber(volumeL / VOLUME_UNITS[unit], VOLUME_DECIMALS[unit]), unit };
}

/** "20.4 fl oz", "8.50 gal", "603.3 mL" or "32.18 L". */
export function formatVolume(volumeL: number, units: UnitSystem, unit?: ShownVolumeUnit): string {
  return joined(volumeFigure(volumeL, units, unit));
}

/**
 * The uncertainty of a volume at the same place value as the volume itself, "± 0.4". One below half of the last place
 * is shown as one of that place, never as ± 0.
 */
export function volumeSigmaFigure(
  sigmaL: number,
  units: UnitSystem,
  unit: ShownVolumeUnit,
): Figure<ShownVolumeUnit> {
  const shownL = sigmaL > 0 ? Math.max(sigmaL, volumeStepL(unit)) : 0;
  return { text: `± ${volumeFigure(shownL, units, unit).text}`, unit };
}

/** Enough digits that a typed label rate comes back as it was typed. */
const RATE_DIGITS = 4;

/** A product rate in fl oz per 1,000 ft² or mL per 100 m². */
export function rateFigure(rateLPerM2: number, units: UnitSystem): Figure<RateUnit> {
  return inRateUnit(rateLPerM2, units === 'us' ? 'fl oz per 1,000 ft²' : 'mL per 100 m²');
}

/** "3 fl oz per 1,000 ft²" or "95.5 mL per 100 m²". */
export function formatRate(rateLPerM2: number, units: UnitSystem): string {
  return joined(rateFigure(rateLPerM2, units));
}

/** A carrier volume on the ground in gal per 1,000 ft² or L per 100 m². */
export function carrierFigure(carrierLPerM2: number, units: UnitSystem): Figure<RateUnit> {
  return inRateUnit(carrierLPerM2, units === 'us' ? 'gal per 1,000 ft²' : 'L per 100 m²');
}

/** "1.25 gal per 1,000 ft²" or "5.093 L per 100 m²". */
export function formatCarrier(carrierLPerM2: number, units: UnitSystem): string {
  return joined(carrierFigure(carrierLPerM2, units));
}

function inRateUnit(rateLPerM2: number, unit: RateUnit): Figure<RateUnit> {
  return { text: formatSignificant(rateLPerM2 / RATE_UNITS[unit], RATE_DIGITS), unit };
}

/** The dial of a hose-end sprayer as it is marked: fl oz of product per gallon of water, or mL per litre. */
export function dialFigure(dialRatio: number, units: UnitSystem): Figure<'fl oz/gal' | 'mL/L'> {
  return units === 'us'
    ? { text: formatSignificant(dialRatio * (GALLON_L / FLUID_OUNCE_L), 3), unit: 'fl oz/gal' }
    : { text: formatSignificant(dialRatio * 1000, 3), unit: 'mL/L' };
}

/** "0.6 fl oz/gal" or "4.69 mL/L". */
export function formatDial(dialRatio: number, units: UnitSystem): string {
  return joined(dialFigure(dialRatio, units));
}

/** A walking pace in ft/s or m/s, to three significant digits. */
export function speedFigure(speedMPerS: number, units: UnitSystem): Figure<SpeedUnit> {
  const unit = units === 'us' ? 'ft/s' : 'm/s';
  return { text: formatSignificant(speedMPerS / SPEED_UNITS[unit], 3), unit };
}

/** "2.5 ft/s" or "0.762 m/s". */
export function formatSpeed(speedMPerS: number, units: UnitSystem): string {
  return joined(speedFigure(speedMPerS, units));
}

/** Minutes and seconds, "4:05"; from an hour on with hours before, "1:02:05". */
export function formatTime(timeS: number): string {
  const whole = Math.round(timeS);
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor(whole / 60) % 60;
  const clock = `${hours > 0 ? two(minutes) : minutes}:${two(whole % 60)}`;
  return hours > 0 ? `${hours}:${clock}` : clock;
}

function two(value: number): string {
  return `${value}`.padStart(2, '0');
}
