import { expect, test } from 'vitest';
import { rowsOf, YARD_PARTS } from '../../../core/edits/index.ts';
import { fullYard } from '../../support/storedYards.ts';

test('the parts are all a yard has, each once', () => {
  expect([...YARD_PARTS].sort()).toEqual(Object.keys(fullYard()).sort()); // the yard document's own members
});

test('every part gives its rows by identity; the details are one row', () => {
  const yard = fullYard();
  expect(rowsOf(yard, 'details')).toEqual([yard.details]); // the one row there is
  for (const part of YARD_PARTS) {
    if (part !== 'details') expect(rowsOf(yard, part)).toBe(yard[part]);
  }
});
