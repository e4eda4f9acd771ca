import { expect, test } from 'vitest';
import { LEAST_PER_TURN, MOST_CHORDS, soundCount } from '../../../core/curves/offCurve.ts';

test('a count within reason is kept, an absurd one comes to the fewest', () => {
  expect(soundCount(MOST_CHORDS)).toBe(MOST_CHORDS);
  expect(soundCount(7)).toBe(7);
  for (const absurd of [MOST_CHORDS + 1, Number.POSITIVE_INFINITY, Number.NaN]) {
    expect(soundCount(absurd)).toBe(LEAST_PER_TURN);
  }
});
