import { expect, test } from 'vitest';
import { ringSumWords, ringText } from '../../../core/zones/ringText.ts';
import { ringWorking } from '../../../core/zones/ringWorking.ts';
import { points, rect } from '../../support/builders.ts';

test('a ring is told corner by corner, with its sums and its area', () => {
  const lines = ringText(ringWorking(rect(0, 0, 20, 10), 'metric'), 'metric').map((line) =>
    line.replace(/\s+/g, ' '),
  );
  expect(lines).toEqual([
    'corner x m y m x_i y_{i+1} x_{i+1} y_i',
    '1 0.00 0.00 0.0000 0.0000', // 0 × 0 and 20 × 0
    '2 20.00 0.00 200.0000 0.0000', // 20 × 10 and 20 × 0
    '3 20.00 10.00 200.0000 0.0000', // 20 × 10 and 0 × 10
    '4 0.00 10.00 0.0000 0.0000', // 0 × 0 and 0 × 10
    'sum 400.0000 0.0000', // of the two columns
    '1/2 × (400.0000 - 0.0000) = 200.00000 m²', // 20 × 10
  ]);
});

test('a ring that runs clockwise, or lies where the products are negative, has no area below nothing', () => {
  const clockwise = ringWorking([...rect(0, 0, 20, 10)].reverse(), 'metric');
  expect(ringSumWords(clockwise, 'metric')).toBe('1/2 × (400.0000 - 0.0000) = 200.00000 m²'); // 20 × 10
  const west = ringWorking(points([-4, 0], [-2, 0], [-2, 3]), 'metric');
  // x y' : -4·0, -2·3, -2·0 = -6; x' y : -2·0, -2·0, -4·3 = -12; half of 6
  expect(ringSumWords(west, 'metric')).toBe('1/2 × (-6.0000 + 12.0000) = 3.00000 m²');
});
