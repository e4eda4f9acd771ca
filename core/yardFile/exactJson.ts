/**
 * JSON text that brings every double back bit for bit. `JSON.stringify` writes the shortest digits that do,
 * but turns minus zero into zero and NaN into null; here minus zero is written `-0` (which `JSON.parse`
 * reads back as such) and a number that is not finite is refused.
 *
 * @param value plain data: objects, arrays, strings, finite numbers, booleans, null
 * @returns null when the value holds anything else
 */
export function exactJson(value: unknown): string | null {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) return null;
    return Object.is(value, -0) ? '-0' : String(value);
  }
  if (Array.isArray(value)) {
    const items = value.map(exactJson);
    return items.includes(null) ? null : `[${items.join(',')}]`;
  }
  if (typeof value !== 'object') return null;
  const members = Object.entries(value).map(([key, member]) => {
    const text = exactJson(member);
    return text === null ? null : `${JSON.stringify(key)}:${text}`;
  });
  return members.includes(null) ? null : `{${members.join(',')}}`;
}
