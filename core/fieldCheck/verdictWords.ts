import type { CheckedDistance } from './fieldCheck.ts';

/** How a taped distance stands to the map, in the same words on screen and paper. */
export function verdictWords({ verdict, endsFound }: Pick<CheckedDistance, 'verdict' | 'endsFound'>): string {
  if (!endsFound) return 'an end was moved';
  return verdict === 'not-stated' ? 'no ± stated' : verdict;
}
