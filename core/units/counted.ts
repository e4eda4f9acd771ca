import { formatNumber } from './formatNumber.ts';

/** "1 corner", "1,200 corners"; for nouns that take an s. */
export function counted(count: number, noun: string): string {
  return `${formatNumber(count, 0)} ${noun}${count === 1 ? '' : 's'}`;
}
