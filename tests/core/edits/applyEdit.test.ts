import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  applyEdit,
  type Edit,
  editFits,
  inverseOf,
  makeEdit,
  putRow,
  removeRow,
} from '../../../core/edits/index.ts';
import type { Mark, Yard } from '../../../core/yard.ts';

const EMPTY: Yard = {
  details: {
    id: 'yard',
    name: 'Test yard',
    groundDate: '2026-05-12',
    unitSystem: 'us',
    frame: { kind: 'loose' },
    cornerSigmaM: null,
    overlapRule: 'drawn-first',
    amountsBy: 'plan',
  },
  pictures: [],
  outlines: [],
  marks: [],
  elevations: [],
  checks: [],
  products: [],
  applicators: [],
  jobs: [],
};

const mark = (id: string, xM: number): Mark => ({
  id,
  kind: 'landmark',
  name: `post ${id}`,
  at: { xM, yM: 0 },
});

/** A random edit that fits the yard: puts, replaces or removes one mark. */
function editFor(yard: Yard, id: string, xM: number, remove: boolean): Edit {
  const gone = remove ? removeRow(yard, 'marks', id) : undefined;
  return gone ? makeEdit('remove post', gone) : makeEdit('put post', putRow(yard, 'marks', mark(id, xM)));
}

describe('an edit and its inverse', () => {
  test('bring the yard back exactly, row order included, however many edits were made', () => {
    const step = fc.tuple(fc.constantFrom('a', 'b', 'c', 'd'), fc.integer(), fc.boolean());
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
        const yards = [EMPTY];
        const edits: Edit[] = [];
        for (const [id, xM, remove] of steps) {
          const yard = yards.at(-1) as Yard;
          const edit = editFor(yard, id, xM, remove);
          edits.push(edit);
          yards.push(applyEdit(yard, edit));
        }
        let back = yards.at(-1) as Yard;
        for (let i = edits.length - 1; i >= 0; i--) {
          back = applyEdit(back, inverseOf(edits[i] as Edit));
          expect(back).toEqual(yards[i]);
        }
      }),
    );
  });

  test('rows the edit does not name stay the same objects', () => {
    const first = applyEdit(EMPTY, makeEdit('put post', putRow(EMPTY, 'marks', mark('a', 1))));
    const second = applyEdit(first, makeEdit('put post', putRow(first, 'marks', mark('b', 2))));
    expect(second.marks[0]).toBe(first.marks[0]);
    expect(second.outlines).toBe(first.outlines);
  });
});

describe('an edit made from another yard', () => {
  const withPost = applyEdit(EMPTY, makeEdit('put post', putRow(EMPTY, 'marks', mark('a', 1))));

  test('does not fit where its row has changed since, is missing or is new already', () => {
    const move = makeEdit('move post', putRow(withPost, 'marks', mark('a', 2)));
    expect(editFits(withPost, move)).toBe(true);
    expect(editFits(applyEdit(withPost, move), move)).toBe(false);
    expect(editFits(EMPTY, move)).toBe(false);
    expect(editFits(withPost, makeEdit('put post', putRow(EMPTY, 'marks', mark('a', 3))))).toBe(false);
  });

  test('is a defect when applied all the same', () => {
    const move = makeEdit('move post', putRow(withPost, 'marks', mark('a', 2)));
    expect(() => applyEdit(EMPTY, move)).toThrow('does not fit');
  });

  test('cannot remove the details a yard always has', () => {
    const change = { ...putRow(EMPTY, 'details', EMPTY.details), after: null } as Edit['changes'][number];
    expect(() => applyEdit(EMPTY, { label: 'x', changes: [change] })).toThrow('always has its details');
  });
});
