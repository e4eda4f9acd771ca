/**
 * Whether two pieces of plain data say the same, whatever order their keys come in. Numbers are compared
 * with `===`: minus zero equals zero, because a column of the yard file keeps no sign of zero.
 */
export function sameData(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    if (!Array.isArray(a) || !Array.isArray(b) || a.length !== b.length) return false;
    return a.every((item, i) => sameData(item, b[i]));
  }
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every(
    (key) =>
      Object.hasOwn(b, key) &&
      sameData((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
  );
}
