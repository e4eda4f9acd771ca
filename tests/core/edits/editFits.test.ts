import { expect, test } from 'vitest';
import { applyEdit, editFits, makeEdit, putRow, removeRow } from '../../../core/edits/index.ts';
import { fullYard } from '../../support/storedYards.ts';

const YARD = fullYard();
const MARK = YARD.marks[0];
if (MARK === undefined) throw new Error('the yard of the tests has no mark');
const MOVED = makeEdit('move', putRow(YARD, 'marks', { ...MARK, at: { xM: 1, yM: 2 } }));

test('an edit fits the yard it was made from, and one that says the same', () => {
  expect(editFits(YARD, MOVED)).toBe(true);
  expect(editFits(structuredClone(YARD), MOVED)).toBe(true);
});

test('an edit does not fit once its row was changed or removed by another', () => {
  expect(editFits(applyEdit(YARD, MOVED), MOVED)).toBe(false);
  const gone = removeRow(YARD, 'marks', MARK.id);
  if (gone === undefined) throw new Error('the mark was not found');
  expect(editFits(applyEdit(YARD, makeEdit('remove', gone)), MOVED)).toBe(false);
});

test('a new row does not fit where its id is taken', () => {
  const added = makeEdit('add', putRow(YARD, 'marks', { ...MARK, id: 'new' }));
  expect(editFits(YARD, added)).toBe(true);
  expect(editFits(applyEdit(YARD, added), added)).toBe(false);
});

test('a change elsewhere in the yard does not matter', () => {
  const renamed = makeEdit('rename', putRow(YARD, 'details', { ...YARD.details, name: 'Other' }));
  expect(editFits(applyEdit(YARD, renamed), MOVED)).toBe(true);
});
