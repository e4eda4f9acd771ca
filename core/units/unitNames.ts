import type { AreaUnit, LengthUnit, SpeedUnit, VolumeUnit } from './unitTables.ts';

/** Every spelling that is understood, as `plainSpelling` leaves it, by the unit it means. */
const LENGTH_SPELLINGS: Record<LengthUnit, string> = {
  mm: 'mm|millimetre|millimetres|millimeter|millimeters',
  cm: 'cm|centimetre|centimetres|centimeter|centimeters',
  m: 'm|metre|metres|meter|meters',
  km: 'km|kilometre|kilometres|kilometer|kilometers',
  in: 'in|inch|inches|"',
  ft: "ft|foot|feet|'",
  yd: 'yd|yds|yard|yards',
};
const AREA_SPELLINGS: Record<AreaUnit, string> = {
  'ft²': 'ft2|sq ft|sqft|sf|square feet|square foot',
  'yd²': 'yd2|sq yd|sqyd|square yards|square yard',
  'm²': 'm2|sq m|sqm|square metres|square metre|square meters|square meter',
  acre: 'acre|acres|ac',
  ha: 'ha|hectare|hectares',
};
// "oz" alone is not among them: on a label it may as well be a weight ounce
const VOLUME_SPELLINGS: Record<VolumeUnit, string> = {
  tsp: 'tsp|teaspoon|teaspoons',
  tbsp: 'tbsp|tbs|tablespoon|tablespoons',
  'fl oz': 'fl oz|floz|fluid ounce|fluid ounces',
  cup: 'cup|cups',
  pt: 'pt|pint|pints',
  qt: 'qt|quart|quarts',
  gal: 'gal|gals|gallon|gallons',
  mL: 'ml|millilitre|millilitres|milliliter|milliliters',
  L: 'l|litre|litres|liter|liters',
};
const SPEED_SPELLINGS: Record<SpeedUnit, string> = {
  'ft/s': 'ft per s|ft per sec|feet per second|fps',
  'm/s': 'm per s|m per sec|metres per second|meters per second',
  mph: 'mph|mi per h|miles per hour',
  'km/h': 'km per h|kmh|kph|kilometres per hour|kilometers per hour',
};

export const LENGTH_NAMES = bySpelling(LENGTH_SPELLINGS);
export const AREA_NAMES = bySpelling(AREA_SPELLINGS);
export const VOLUME_NAMES = bySpelling(VOLUME_SPELLINGS);
export const SPEED_NAMES = bySpelling(SPEED_SPELLINGS);

function bySpelling<U extends string>(spellings: Record<U, string>): Record<string, U> {
  return Object.fromEntries(
    (Object.entries(spellings) as [U, string][]).flatMap(([unit, names]) =>
      names.split('|').map((name) => [name, unit] as const),
    ),
  );
}
