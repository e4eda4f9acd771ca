import { expect, test } from 'vitest';
import type { KindChange } from '../../../core/compare/index.ts';
import type { OutlineKind } from '../../../core/yard.ts';
import { changedNames } from '../../../renderer/ground/changedNames.ts';

const NOTHING = { beforeM2: 0, lostM2: 0, gainedM2: 0, unchangedM2: 0, afterM2: 0, lost: [], gained: [] };

function kind(of: OutlineKind, appeared: readonly string[], vanished: readonly string[]): KindChange {
  const named = (names: readonly string[]) => names.map((name) => ({ id: name, name, areaM2: 1 }));
  return { kind: of, ground: NOTHING, appeared: named(appeared), vanished: named(vanished) };
}

test('new and gone outlines are named with their kind; zones are not, for they have rows', () => {
  const kinds = [kind('zone', ['Side'], []), kind('bed', ['Herbs'], ['Roses']), kind('tree', ['Oak'], [])];
  expect(changedNames(kinds)).toEqual(['New: Herbs (bed), Oak (tree ring).', 'Gone: Roses (bed).']); // as made above
});

test('where nothing came or went nothing is said', () => {
  expect(changedNames([kind('bed', [], [])])).toEqual([]);
});
