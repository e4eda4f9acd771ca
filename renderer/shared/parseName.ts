import { ok, type Result, trouble } from '../../core/result.ts';

/** A name is anything but nothing. */
export function parseName(typed: string): Result<string> {
  const name = typed.trim();
  return name === '' ? trouble({ kind: 'value/missing', where: { field: 'name' }, facts: {} }) : ok(name);
}
