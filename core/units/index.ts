/**
 * Units: branded quantities, exact conversion constants, reading what a person types and the only number
 * formatting there is. In: SI numbers or typed text; out: text in the person's units or a branded SI number.
 * Method: tables of exact factors; a fixed English number format (comma between thousands, point before the
 * decimals) that no locale changes. Out of scope: what a value means, and whether a label allows it.
 */
export {
  type Degrees,
  degrees,
  type Kilograms,
  kilograms,
  type Litres,
  type LitresPerM2,
  litres,
  litresPerM2,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  type Seconds,
  type SquareMetres,
  seconds,
  squareMetres,
} from './brands.ts';
export {
  ACRE_M2,
  CUP_L,
  FLUID_OUNCE_L,
  FOOT_M,
  GALLON_L,
  HECTARE_M2,
  INCH_M,
  OUNCE_KG,
  PINT_L,
  POUND_KG,
  QUART_L,
  SQUARE_FOOT_M2,
  SQUARE_YARD_M2,
  SURVEY_ACRE_M2,
  SURVEY_FOOT_M,
  TABLESPOON_L,
  TEASPOON_L,
  THOUSAND_FT2_M2,
  YARD_M,
} from './constants.ts';
export { counted } from './counted.ts';
export type { Figure } from './figure.ts';
export {
  carrierFigure,
  carrierUnitFor,
  dialFigure,
  formatCarrier,
  formatDial,
  formatRate,
  formatSpeed,
  formatTime,
  formatVolume,
  rateFigure,
  type ShownVolumeUnit,
  speedFigure,
  volumeFigure,
  volumeSigmaFigure,
  volumeStepL,
  volumeUnitFor,
} from './formatAmounts.ts';
export {
  areaFigure,
  areaSigmaFigure,
  fineLengthFigure,
  formatAngle,
  formatArea,
  formatAreaBoth,
  formatAreaSigma,
  formatEnough,
  formatLength,
  formatPercent,
  formatTape,
  lengthFigure,
} from './formatGround.ts';
export { formatDay } from './formatDay.ts';
export { formatNumber, formatSignificant } from './formatNumber.ts';
export { areaStepM2, areaUnitM2, lengthUnitM } from './plainUnits.ts';
export { sum } from './sum.ts';
export { otherUnits, type UnitSystem } from './unitSystem.ts';
export type { AreaUnit, LengthUnit, RateUnit, SpeedUnit, VolumeUnit } from './unitTables.ts';
export { parseAngle } from './parseAngle.ts';
export { parseArea, parseLength, parseOffset, parseSpeed, parseVolume } from './parseQuantity.ts';
export { parseCarrier, parseRate } from './parseRate.ts';
export { USUAL_UNITS, type UsualUnits } from './usualUnits.ts';
export { apportionForDisplay } from './apportionForDisplay.ts';
