/** What came of reading untrusted bytes, columns or JSON: the value, or what is wrong with it in a few words. */
export type Reading<T> = { readonly ok: true; readonly value: T } | Unreadable;

export interface Unreadable {
  readonly ok: false;
  readonly detail: string;
}

export function readAs<T>(value: T): Reading<T> {
  return { ok: true, value };
}

export function unreadable(detail: string): Unreadable {
  return { ok: false, detail };
}
