import { expect, test } from 'vitest';
import { joined } from '../../../core/units/figure.ts';

test('a figure and its unit stand in one line with a space between', () => {
  expect(joined({ text: '43.3', unit: 'ft' })).toBe('43.3 ft'); // the input
});
