import type { FillFigures } from './sheetFigures.ts';

/** "B1 and C1": the sections that are done from one load. */
export function sectionsOfFill({ parts }: Pick<FillFigures, 'parts'>): string {
  return listed(parts.map(({ section }) => section.id));
}

/** "Back lawn and side strip": their zones, each once. */
export function zonesOfFill({ parts }: Pick<FillFigures, 'parts'>): string {
  return listed([...new Set(parts.map(({ section }) => section.zoneName))]);
}

/** More names than this are counted rather than listed: a column or a card's head has room for no more. */
const MOST_NAMES = 4;

function listed(names: readonly string[]): string {
  if (names.length > MOST_NAMES) {
    return `${names.slice(0, MOST_NAMES - 1).join(', ')} and ${names.length - MOST_NAMES + 1} more`;
  }
  return names.length < 2 ? names.join() : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
