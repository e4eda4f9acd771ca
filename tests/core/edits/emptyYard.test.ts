import { expect, test } from 'vitest';
import { emptyYard, rowsOf, YARD_PARTS } from '../../../core/edits/index.ts';

test('a yard begins with its details and no row of any other part', () => {
  const yard = emptyYard('Back', { kind: 'loose' }, 'metric', '2026-05-12');
  const rows = YARD_PARTS.map((part) => rowsOf(yard, part).length);
  expect(rows).toEqual(YARD_PARTS.map((part) => (part === 'details' ? 1 : 0))); // nothing is drawn yet
  expect(yard.details.cornerSigmaM).toBeNull(); // nobody has stated it
});
