import { expect, test } from 'vitest';
import { countWords } from '../../../core/sheet/sheetWords.ts';

test('one is counted in the singular', () => {
  expect(countWords(1, 'load', 'loads')).toBe('1 load');
  expect(countWords(1200, 'load', 'loads')).toBe('1,200 loads');
});
