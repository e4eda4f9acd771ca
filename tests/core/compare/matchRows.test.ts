import { expect, test } from 'vitest';
import { matchRows } from '../../../core/compare/matchRows.ts';

const row = (id: string, name: string) => ({ id, name });

test('an id decides before a name does', () => {
  const [front, back] = [row('1', 'Front'), row('2', 'Back')];
  // Back was given the name Front had; it is still Back.
  const [renamed, anew] = [row('2', 'Front'), row('9', 'Back')];
  const { later, gone } = matchRows([front, back], [renamed, anew]);
  expect(later).toEqual([
    { now: renamed, was: back },
    { now: anew, was: undefined },
  ]);
  expect(gone).toEqual([front]);
});

test('what has no id in common is found by its name, one for one in order', () => {
  const before = [row('1', 'bed'), row('2', 'bed'), row('3', 'bed')];
  const after = [row('a', 'bed'), row('b', 'bed')];
  const { later, gone } = matchRows(before, after);
  expect(later.map(({ was }) => was?.id)).toEqual(['1', '2']);
  expect(gone.map(({ id }) => id)).toEqual(['3']);
});
