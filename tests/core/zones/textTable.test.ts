import { expect, test } from 'vitest';
import { columnWidths, textTable } from '../../../core/zones/index.ts';

test('columns stand in line, the first to the left, no blanks at the end of a line', () => {
  expect(textTable([['a', 'bbb'], ['cccc', '1'], ['d']])).toEqual(['a     bbb', 'cccc    1', 'd']); // widths 4 and 3
  expect(textTable([])).toEqual([]);
});

test('a table may be as long as a ring has corners', () => {
  const rows = Array.from({ length: 200_000 }, (_, i) => [`${i}`, 'x']);
  expect(columnWidths(rows)).toEqual([6, 1]); // 199999
});
