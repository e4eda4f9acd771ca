import { ok, type Result, trouble } from '../../core/result.ts';

/** A calendar day typed as yyyy-mm-dd that really exists. */
export function parseIsoDate(typed: string): Result<string> {
  const text = typed.trim();
  const at = new Date(`${text}T00:00:00Z`);
  const real =
    /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(at.getTime()) && at.toISOString().startsWith(text);
  return real
    ? ok(text)
    : trouble({ kind: 'value/not-a-date', where: { field: 'date of the ground' }, facts: { typed: text } });
}
