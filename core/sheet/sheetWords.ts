import { FLUID_OUNCE_L, formatNumber, formatSignificant, GALLON_L } from '../units/index.ts';
import type { UnitSystem } from '../yard.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** '2026-05-12' as '12 May 2026', whatever follows the day; text that is no ISO date stays as it is. */
export function dateWords(isoDate: string): string {
  const parts = /^(\d{4})-(\d{2})-(\d{2})/.exec(isoDate);
  const month = parts === null ? undefined : MONTHS[Number(parts[2]) - 1];
  return parts === null || month === undefined ? isoDate : `${Number(parts[3])} ${month} ${parts[1]}`;
}

/** The dial of a hose-end sprayer as it is marked: fl oz of product per gallon of water, or mL per litre. */
export function dialWords(dialRatio: number | null, units: UnitSystem): string {
  if (dialRatio === null) return '';
  return units === 'us'
    ? `${formatSignificant(dialRatio * (GALLON_L / FLUID_OUNCE_L), 3)} fl oz/gal`
    : `${formatSignificant(dialRatio * 1000, 3)} mL/L`;
}

/** '1 pass', '4 passes'. */
export function countWords(count: number, one: string, many: string): string {
  return `${formatNumber(count, 0)} ${count === 1 ? one : many}`;
}
