import { expect, test } from 'vitest';
import { degrees, litres, litresPerM2, metres, seconds, squareMetres } from '../../../core/units/index.ts';

test('saying what a number is changes nothing of it', () => {
  const makers: readonly ((value: number) => number)[] = [
    degrees,
    litres,
    litresPerM2,
    metres,
    seconds,
    squareMetres,
  ];
  for (const brand of makers) {
    expect([1.5, -0, 5e-324].map((value) => brand(value))).toEqual([1.5, -0, 5e-324]); // the input
  }
});
