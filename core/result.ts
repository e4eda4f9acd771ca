import type { Problem } from './problems.ts';

/** Expected trouble is a value: a result is either a value or at least one problem a person can act on. */
export type Result<T> = Ok<T> | Trouble;

export interface Ok<T> {
  readonly ok: true;
  readonly value: T;
}

export interface Trouble {
  readonly ok: false;
  readonly problems: readonly [Problem, ...Problem[]];
}

/** Wraps a value as a success. */
export function ok<T>(value: T): Ok<T> {
  return { ok: true, value };
}

/** Wraps one or more problems as a failure. */
export function trouble(first: Problem, ...more: readonly Problem[]): Trouble {
  return { ok: false, problems: [first, ...more] };
}

/**
 * An internal contract is broken: ours to mend, never the person's. Thrown, never returned, and caught only
 * at the window boundary and at the host's top level.
 */
export class Defect extends Error {
  override readonly name = 'Defect';
}
