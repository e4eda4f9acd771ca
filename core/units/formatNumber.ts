import { Defect } from '../result.ts';

/**
 * A number with a fixed count of decimals, a comma between thousands and a point before the decimals, in
 * both unit systems and on every machine. Never prints "-0".
 */
export function formatNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value) || Math.abs(value) >= 1e21)
    throw new Defect(`not a printable number: ${value}`);
  const [whole = '', fraction] = Math.abs(value).toFixed(decimals).split('.');
  const digits = whole.replace(/\B(?=(?:\d{3})+$)/g, ',');
  const text = fraction === undefined ? digits : `${digits}.${fraction}`;
  return value < 0 && /[1-9]/.test(text) ? `-${text}` : text;
}

/**
 * A number to so many significant digits, without zeros that say nothing: 3 stays "3", 0.09554 to three is
 * "0.0955". Whole digits are never dropped: 12,345 to three is "12,345".
 */
export function formatSignificant(value: number, digits: number): string {
  if (value === 0) return '0';
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value))));
  const text = formatNumber(value, Math.min(decimals, 20));
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}
