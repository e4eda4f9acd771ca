/** A JSON value, or in a few words why the bytes are not one. */
export type ParsedJson =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly detail: string };

/** Reads UTF-8 JSON; a byte order mark is allowed. The engine's parser does not recurse, so depth is no danger. */
export function parseJson(bytes: Uint8Array): ParsedJson {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return { ok: false, detail: 'it is not UTF-8 text' };
  }
  try {
    return { ok: true, value: JSON.parse(text) as unknown };
  } catch (error) {
    return { ok: false, detail: `it is not JSON${placeOf(error, text)}` };
  }
}

/** The engine says where in characters ("at position 34"); a person counts lines. */
function placeOf(error: unknown, text: string): string {
  const position = error instanceof Error ? /at position (\d+)/.exec(error.message)?.[1] : undefined;
  if (position === undefined) return ', it ends too early';
  const before = text.slice(0, Number(position)).split('\n');
  return `, see line ${before.length} character ${(before.at(-1) ?? '').length + 1}`;
}
