import { expect, test } from 'vitest';
import { shownText, workedText } from '../../../core/zones/index.ts';

test('a worked area has two decimals of a square foot or three of a square metre', () => {
  expect(workedText(1234.5, 'us')).toBe('1,234.50'); // the input
  expect(workedText(1234.5, 'metric')).toBe('1,234.500'); // the input
  expect(workedText(-0.25, 'us')).toBe('-0.25'); // the input
});

test('a shown area is whole square feet or a tenth of a square metre', () => {
  expect(shownText(1234.4, 'us')).toBe('1,234'); // nearest whole
  expect(shownText(1234.46, 'metric')).toBe('1,234.5'); // nearest tenth
});
