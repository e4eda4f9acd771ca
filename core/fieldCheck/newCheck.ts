import type { FieldCheck, Yard } from '../yard.ts';
import { findEnd } from './findEnd.ts';

/** A check named by what its ends lie on: "Lawn 1 to 3" when both are of one outline. */
export function newCheck(
  yard: Pick<Yard, 'outlines' | 'marks'>,
  said: Pick<FieldCheck, 'id' | 'from' | 'to' | 'tapedM'>,
): FieldCheck {
  const [from, to] = [findEnd(yard, said.from), findEnd(yard, said.to)];
  const sameOutline = 'outline' in from && 'outline' in to && from.outline === to.outline;
  const prefix = sameOutline ? `${from.outline.name} ` : '';
  const end = to.short.startsWith(prefix) ? to.short.slice(prefix.length) : to.short;
  return { ...said, name: `${from.short} to ${end}` };
}
