import { expect, test } from 'vitest';
import { countWords, dateWords, dialFigure, dialWords } from '../../../core/sheet/sheetWords.ts';

test('an ISO date is written out, a date-time by its day, and anything else as it is', () => {
  expect(dateWords('2026-05-12')).toBe('12 May 2026');
  expect(dateWords('2026-11-05T10:00:00Z')).toBe('5 Nov 2026');
  expect(dateWords('last spring')).toBe('last spring');
  expect(dateWords('2026-13-01')).toBe('2026-13-01'); // there is no thirteenth month
});

test('the dial is fluid ounces to the gallon, or millilitres to the litre', () => {
  // 1/128 of product to water is 1 fl oz per gallon, since a US gallon is 128 fl oz
  expect(dialWords(1 / 128, 'us')).toBe('1 fl oz/gal');
  expect(dialFigure(1 / 100, 'metric')).toEqual({ text: '10', unit: 'mL/L' }); // 1000 mL / 100
  expect(dialWords(null, 'us')).toBe('');
});

test('one is counted in the singular', () => {
  expect(countWords(1, 'load', 'loads')).toBe('1 load');
  expect(countWords(1200, 'load', 'loads')).toBe('1,200 loads');
});
