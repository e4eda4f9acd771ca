import { expect, test } from 'vitest';
import { straight } from '../../../core/curves/index.ts';
import { newOutline } from '../../../core/edits/index.ts';
import type { OutlineKind } from '../../../core/yard.ts';
import { shapeOf } from '../../../core/zones/shape.ts';
import { stripShapes } from '../../../core/zones/strips.ts';
import { untreatedOf } from '../../../core/zones/untreated.ts';
import { rect } from '../../support/builders.ts';

function outline(id: string, kind: OutlineKind, xM: number) {
  return newOutline({ id, kind, name: id, outer: straight(rect(xM, 0, 2, 2)) });
}

test('ground that stays untreated is gathered by kind, in the order spray on it matters', () => {
  const bed = outline('b', 'bed', 0);
  const shapes = [bed, outline('c', 'bed', 5), outline('w', 'water', 10)].map(shapeOf);
  const gathered = untreatedOf(shapes, []).map(({ kind, regions }) => [kind, regions.length]);
  expect(gathered).toEqual([
    ['water', 1], // told first
    ['bed', 2], // both beds
  ]);
});

test('strips kept off count as keep-off', () => {
  const strips = stripShapes({ ...outline('b', 'bed', 0), keepOffM: 1 });
  expect(untreatedOf([], strips).map(({ kind }) => kind)).toEqual(['keep-off']); // one strip all round
});
