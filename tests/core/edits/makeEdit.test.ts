import { expect, test } from 'vitest';
import { makeEdit, putRow, removeRow } from '../../../core/edits/index.ts';
import { fullYard } from '../../support/storedYards.ts';

const YARD = fullYard();
const [FIRST, SECOND] = YARD.marks;
if (FIRST === undefined || SECOND === undefined) throw new Error('the yard of the tests has too few marks');

test('putting a row that is there replaces it where it stands', () => {
  const after = { ...SECOND, name: 'Post' };
  // The second row of the list stands at 1.
  expect(putRow(YARD, 'marks', after)).toEqual({
    part: 'marks',
    id: SECOND.id,
    index: 1,
    before: SECOND,
    after,
  });
});

test('putting a new row adds it at the end', () => {
  const after = { ...FIRST, id: 'new' };
  const index = YARD.marks.length; // the place after the last row
  expect(putRow(YARD, 'marks', after)).toEqual({ part: 'marks', id: 'new', index, before: null, after });
});

test('removing names the row and where it stood; there is nothing to remove where there is no row', () => {
  // The first row of the list stands at 0.
  expect(removeRow(YARD, 'marks', FIRST.id)).toEqual({
    part: 'marks',
    id: FIRST.id,
    index: 0,
    before: FIRST,
    after: null,
  });
  expect(removeRow(YARD, 'marks', 'nobody')).toBeUndefined();
});

test('an edit keeps its changes in the order given', () => {
  const a = putRow(YARD, 'marks', { ...FIRST, name: 'a' });
  const b = putRow(YARD, 'marks', { ...SECOND, name: 'b' });
  expect(makeEdit('rename', a, b)).toEqual({ label: 'rename', changes: [a, b] }); // as given
});
