import type { PrintedZone } from './printedZones.ts';
import { someNames } from './someNames.ts';

/**
 * What is said under areas that have no ± because nothing says how sure their corners are: without it they would read
 * as exact. Undefined where every area has one.
 */
export function unstatedWords(
  zones: readonly Pick<PrintedZone, 'name' | 'treatedM2' | 'sigmaM2'>[],
): string | undefined {
  // A zone of which nothing is left to treat has nothing to be unsure of.
  const names = zones.filter(({ treatedM2, sigmaM2 }) => sigmaM2 === null && treatedM2 > 0);
  if (names.length === 0) return undefined;
  const whose =
    names.length === zones.length ? 'for any zone' : `for ${someNames(names.map(({ name }) => name))}`;
  return `± not stated ${whose}`;
}
