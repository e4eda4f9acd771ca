import { expect, test } from 'vitest';
import { textTable } from '../../../core/zones/textTable.ts';

test('columns stand in line, the first to the left, no blanks at the end of a line', () => {
  expect(textTable([['a', 'bbb'], ['cccc', '1'], ['d']])).toEqual(['a     bbb', 'cccc    1', 'd']); // widths 4 and 3
  expect(textTable([])).toEqual([]);
});
