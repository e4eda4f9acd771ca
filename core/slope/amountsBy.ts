import type { YardDetails } from '../yard.ts';

/** Which area amounts are worked out from, for screen, paper and terminal alike. */
export const AMOUNTS_BY_WORDS: Readonly<Record<YardDetails['amountsBy'], string>> = {
  plan: 'the map’s area',
  surface: 'the sloping surface',
};
