import {
  ACRE_M2,
  CUP_L,
  FLUID_OUNCE_L,
  FOOT_M,
  GALLON_L,
  HECTARE_M2,
  INCH_M,
  PINT_L,
  QUART_L,
  SQUARE_FOOT_M2,
  SQUARE_YARD_M2,
  TABLESPOON_L,
  TEASPOON_L,
  THOUSAND_FT2_M2,
  YARD_M,
} from './constants.ts';

/** How each unit is printed, and what one of it is in SI. */
export const LENGTH_UNITS = {
  mm: 0.001,
  cm: 0.01,
  m: 1,
  km: 1000,
  in: INCH_M,
  ft: FOOT_M,
  yd: YARD_M,
} as const;
export const AREA_UNITS = {
  'ft²': SQUARE_FOOT_M2,
  'yd²': SQUARE_YARD_M2,
  'm²': 1,
  acre: ACRE_M2,
  ha: HECTARE_M2,
} as const;
export const VOLUME_UNITS = {
  tsp: TEASPOON_L,
  tbsp: TABLESPOON_L,
  'fl oz': FLUID_OUNCE_L,
  cup: CUP_L,
  pt: PINT_L,
  qt: QUART_L,
  gal: GALLON_L,
  mL: 0.001,
  L: 1,
} as const;
export const SPEED_UNITS = {
  'ft/s': FOOT_M,
  'm/s': 1,
  /** 5,280 ft in 3,600 s. */
  mph: (5280 * FOOT_M) / 3600,
  'km/h': 1 / 3.6,
} as const;
/** The rates Platpace prints; more can be typed, as any volume over any area. */
export const RATE_UNITS = {
  'fl oz per 1,000 ft²': FLUID_OUNCE_L / THOUSAND_FT2_M2,
  'gal per 1,000 ft²': GALLON_L / THOUSAND_FT2_M2,
  'mL per 100 m²': 0.001 / 100,
  'L per 100 m²': 1 / 100,
} as const;

export type LengthUnit = keyof typeof LENGTH_UNITS;
export type AreaUnit = keyof typeof AREA_UNITS;
export type VolumeUnit = keyof typeof VOLUME_UNITS;
export type SpeedUnit = keyof typeof SPEED_UNITS;
export type RateUnit = keyof typeof RATE_UNITS;
