import { ok, type Result, trouble } from '../result.ts';
import { type LitresPerM2, litresPerM2 } from './brands.ts';
import { AREA, notANumber, positive, readQuantity, VOLUME } from './parseQuantity.ts';
import { plainSpelling } from './readTerms.ts';
import { RATE_UNITS, type RateUnit } from './unitTables.ts';

const RATE_EXPECTED = '3 fl oz per 1,000 ft², 95 mL per 100 m² or 4 L/ha';
const CARRIER_EXPECTED = '1.25 gal per 1,000 ft², 5 L per 100 m² or 400 L/ha';

/**
 * A volume of product over ground: "3 fl oz/1000ft2", "1 1/2 fl oz per 1,000 ft²", "4 L/ha", "3".
 *
 * @param defaultUnit what a bare number is in; null = the unit has to be typed
 * Problems: as `parseLength`, naming `field`
 */
export function parseRate(typed: string, field: string, defaultUnit: RateUnit | null): Result<LitresPerM2> {
  return positive(readRate(typed, field, defaultUnit, RATE_EXPECTED), field, litresPerM2);
}

/** A volume of carrier (in a tank: of the whole mix) over ground: "1.25 gal/1000 sq ft", "5 L per 100 m²". */
export function parseCarrier(
  typed: string,
  field: string,
  defaultUnit: RateUnit | null,
): Result<LitresPerM2> {
  return positive(readRate(typed, field, defaultUnit, CARRIER_EXPECTED), field, litresPerM2);
}

function readRate(
  typed: string,
  field: string,
  defaultUnit: RateUnit | null,
  expected: string,
): Result<number> {
  const text = plainSpelling(typed);
  // the first slash or "per" behind a letter parts volume from ground; one behind a digit is a fraction
  const [, volumeText, areaText] = /^(.*?[a-z])\s*(?:\/|\sper\s)\s*(.+)$/.exec(text) ?? [];
  if (volumeText === undefined || areaText === undefined) {
    return readQuantity(typed, field, bareReading(expected), defaultUnit);
  }
  const volume = readQuantity(volumeText, field, { ...VOLUME, expected }, null, typed);
  if (!volume.ok) return volume;
  const perOne = /^[a-z]/.test(areaText) ? `1 ${areaText}` : areaText;
  const area = readQuantity(perOne, field, { ...AREA, expected }, null, typed);
  if (!area.ok) return area;
  return area.value > 0 ? ok(volume.value / area.value) : trouble(notANumber(field, typed));
}

/** Only a bare number is read here; any unit behind it lacks its ground and does not fit. */
function bareReading(expected: string) {
  return { factors: RATE_UNITS, names: {}, next: {}, expected };
}
