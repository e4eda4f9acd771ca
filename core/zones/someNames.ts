/** More names than this are counted rather than listed. */
const MOST_NAMES = 4;

/** A list of names kept short: the first few, then how many more there are. */
export function someNames(names: readonly string[]): string {
  if (names.length <= MOST_NAMES) return names.join(', ');
  return `${names.slice(0, MOST_NAMES - 1).join(', ')} and ${names.length - MOST_NAMES + 1} more`;
}
