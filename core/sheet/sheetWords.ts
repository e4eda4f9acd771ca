import { formatNumber } from '../units/index.ts';

/** '1 pass', '4 passes'. */
export function countWords(count: number, one: string, many: string): string {
  return `${formatNumber(count, 0)} ${count === 1 ? one : many}`;
}
