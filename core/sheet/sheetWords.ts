import { type Figure, FLUID_OUNCE_L, formatNumber, formatSignificant, GALLON_L } from '../units/index.ts';
import type { UnitSystem } from '../yard.ts';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** '2026-05-12' as '12 May 2026', whatever follows the day; text that is no ISO date stays as it is. */
export function dateWords(isoDate: string): string {
  const parts = /^(\d{4})-(\d{2})-(\d{2})/.exec(isoDate);
  const month = parts === null ? undefined : MONTHS[Number(parts[2]) - 1];
  return parts === null || month === undefined ? isoDate : `${Number(parts[3])} ${month} ${parts[1]}`;
}

/** The dial of a hose-end sprayer as it is marked: fl oz of product per gallon of water, or mL per litre. */
export function dialFigure(dialRatio: number, units: UnitSystem): Figure<'fl oz/gal' | 'mL/L'> {
  return units === 'us'
    ? { text: formatSignificant(dialRatio * (GALLON_L / FLUID_OUNCE_L), 3), unit: 'fl oz/gal' }
    : { text: formatSignificant(dialRatio * 1000, 3), unit: 'mL/L' };
}

/** '1.19 fl oz/gal'; empty for a tank, which has no dial. */
export function dialWords(dialRatio: number | null, units: UnitSystem): string {
  if (dialRatio === null) return '';
  const { text, unit } = dialFigure(dialRatio, units);
  return `${text} ${unit}`;
}

/** '1 pass', '4 passes'. */
export function countWords(count: number, one: string, many: string): string {
  return `${formatNumber(count, 0)} ${count === 1 ? one : many}`;
}
