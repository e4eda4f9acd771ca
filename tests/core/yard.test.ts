import { expect, test } from 'vitest';
import { CUT_OUT_KINDS, MARK_KINDS, OUTLINE_KINDS } from '../../core/yard.ts';

test('every kind is named once, and no outline is called as a mark is', () => {
  const kinds = [...OUTLINE_KINDS, ...MARK_KINDS];
  expect(new Set(kinds).size).toBe(kinds.length);
});

test('every cut-out is an outline, and neither a zone, a keep-off strip nor a check plot is a cut-out', () => {
  const others = OUTLINE_KINDS.filter((kind) => !(CUT_OUT_KINDS as readonly string[]).includes(kind));
  expect(others).toEqual(['zone', 'keep-off', 'check-plot']); // design, the words: what is treated, and what is buffered
  expect(OUTLINE_KINDS).toHaveLength(others.length + CUT_OUT_KINDS.length);
});
