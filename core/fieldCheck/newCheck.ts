import type { FieldCheck, Yard } from '../yard.ts';
import { findEnd } from './findEnd.ts';

/** A check named by what its ends lie on. */
export function newCheck(
  yard: Pick<Yard, 'outlines' | 'marks'>,
  said: Pick<FieldCheck, 'id' | 'from' | 'to' | 'tapedM'>,
): FieldCheck {
  const [from, to] = [findEnd(yard, said.from), findEnd(yard, said.to)];
  return { ...said, name: `${from.short} to ${to.short}` };
}
