import fc from 'fast-check';
import { expect, test } from 'vitest';
import { putRow, rowsOf, YARD_PARTS } from '../../../core/edits/index.ts';
import { checkEdit, checkRow, checkYard } from '../../../core/yardFile/index.ts';
import { anyDeeds, anyYard, editOf, fullYard, moveCorner, point } from '../../support/storedYards.ts';

const YARD = fullYard();

test('every yard and every edit the other tests make is in order', () => {
  fc.assert(
    fc.property(anyYard, anyDeeds, (yard, deeds) => {
      expect(checkYard(yard)).toBeNull();
      for (const deed of deeds)
        if (deed.do === 'edit') expect(checkEdit(editOf(yard, deed.strokes, 1))).toBeNull();
    }),
    { seed: 20261125 },
  );
});

test('anything at all put in the place of a member is refused, or is as good', () => {
  for (const part of YARD_PARTS) {
    for (const row of rowsOf(YARD, part)) {
      for (const name of Object.keys(row)) {
        expect(checkRow(part, { ...row, [name]: undefined }), `${part}.${name}`).not.toBeNull();
        expect(checkRow(part, { ...row, [name]: Number.NaN }), `${part}.${name}`).not.toBeNull();
        const { [name as keyof typeof row]: _gone, ...without } = row;
        expect(checkRow(part, without), `${part}.${name}`).toBe(`has no ${name}`);
      }
      expect(checkRow(part, { ...row, more: 1 })).toBe('has an unknown more');
    }
  }
});

test('junk of every kind is refused without a throw', () => {
  fc.assert(
    fc.property(fc.anything(), (junk) => {
      for (const part of YARD_PARTS) expect(checkRow(part, junk)).not.toBeNull();
      expect(checkYard(junk)).not.toBeNull();
      expect(checkEdit(junk)).not.toBeNull();
      expect(checkEdit({ label: '', changes: [junk] })).not.toBeNull();
    }),
    { seed: 20261125 },
  );
});

test('an id twice in one part is told by the name of the part', () => {
  expect(checkYard({ ...YARD, marks: [...YARD.marks, YARD.marks[0]] })).toBe(
    'the yard: marks has an id twice',
  );
});

test.each([
  ['neither before nor after', { part: 'marks', id: 'm', index: 0, before: null, after: null }],
  ['adds or removes the details', { ...putRow(YARD, 'details', YARD.details), before: null }],
  ['adds or removes the details', { ...putRow(YARD, 'details', YARD.details), after: null }],
  ['another id', { ...putRow(YARD, 'marks', YARD.marks[0] as never), id: 'other' }],
  ['index is below 0', { ...putRow(YARD, 'marks', YARD.marks[0] as never), index: -1 }],
  ['index is not a whole number', { ...putRow(YARD, 'marks', YARD.marks[0] as never), index: 0.5 }],
  ['part is none of', { ...putRow(YARD, 'marks', YARD.marks[0] as never), part: 'images' }],
  ['xM is not a finite number', moveCorner(YARD, 'z1', point(Number.POSITIVE_INFINITY, 0)).changes[0]],
])('an edit is refused: %s', (why, change) => {
  expect(checkEdit({ label: 'x', changes: [change] })).toContain(why);
});

test('text with half a character, which UTF-8 cannot hold, is refused', () => {
  expect(checkRow('marks', { ...YARD.marks[0], name: 'a\ud83d' })).toBe('name holds half a character');
  expect(checkRow('marks', { ...YARD.marks[0], name: 'a\ud83d\ude00' })).toBeNull();
});
