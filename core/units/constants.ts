/**
 * Exact conversion constants, each one unit in SI.
 * Sources: [FR] Federal Register 85:62698 (5 October 2020), NIST and NGS, on the foot; [HB44] NIST Handbook 44,
 * Appendix C, for volume and mass; what follows from those by definition shows its product.
 */

/** International foot [FR]. */
export const FOOT_M = 0.3048;
/** US survey foot [FR]: kept apart, for old State Plane coordinates only. */
export const SURVEY_FOOT_M = 1200 / 3937;
/** 1/12 ft. */
export const INCH_M = 0.0254;
/** 3 ft. */
export const YARD_M = 0.9144;

/** 0.3048². */
export const SQUARE_FOOT_M2 = 0.09290304;
/** The area lawn rates are quoted on: 1,000 × 0.3048². */
export const THOUSAND_FT2_M2 = 92.90304;
/** 9 ft². */
export const SQUARE_YARD_M2 = 0.83612736;
/** International acre: 43,560 × 0.3048². */
export const ACRE_M2 = 4046.8564224;
/** Acre of US survey feet: 43,560 × (1200/3937)². */
export const SURVEY_ACRE_M2 = 43_560 * SURVEY_FOOT_M * SURVEY_FOOT_M;
export const HECTARE_M2 = 10_000;

/** US gallon of 231 cubic inches [HB44]. */
export const GALLON_L = 3.785411784;
/** 1/4 gal. */
export const QUART_L = 0.946352946;
/** 1/8 gal. */
export const PINT_L = 0.473176473;
/** 1/16 gal. */
export const CUP_L = 0.2365882365;
/** US fluid ounce: 1/128 gal. */
export const FLUID_OUNCE_L = 0.0295735295625;
/** 1/2 fl oz. */
export const TABLESPOON_L = 0.01478676478125;
/** 1/6 fl oz. */
export const TEASPOON_L = 0.00492892159375;

/** Avoirdupois pound [HB44]. */
export const POUND_KG = 0.45359237;
/** Avoirdupois (weight) ounce: 1/16 lb; never a fluid ounce. */
export const OUNCE_KG = 0.028349523125;
