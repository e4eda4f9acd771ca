import type { FillFigures } from './sheetFigures.ts';

/** "B1 and C1": the sections that are done from one load. */
export function sectionsOfFill({ parts }: Pick<FillFigures, 'parts'>): string {
  return listed(parts.map(({ section }) => section.id));
}

/** "Back lawn and side strip": their zones, each once. */
export function zonesOfFill({ parts }: Pick<FillFigures, 'parts'>): string {
  return listed([...new Set(parts.map(({ section }) => section.zoneName))]);
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join() : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
