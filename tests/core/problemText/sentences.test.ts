import { expect, test } from 'vitest';
import { atStart, lengthOrNone, moreOrLess, say } from '../../../core/problemText/sentences.ts';

test('a sentence begins with a capital, whatever the field is called on its line', () => {
  expect(atStart('label rate')).toBe('Label rate');
  expect(say('Wrong.', 'Mend it.')).toEqual({ what: 'Wrong.', mend: 'Mend it.' });
});

test('a ratio is said as what it is more or less than one', () => {
  expect(moreOrLess(1.018)).toBe('1.8% more'); // 1.018 - 1
  expect(moreOrLess(0.75)).toBe('25% less'); // 1 - 0.75
  expect(moreOrLess(1.2, 'farther apart', 'closer together')).toBe('20% farther apart');
  expect(moreOrLess(44)).toBe('4,300% more'); // 43 times one
});

test('a length that is none is said to be none', () => {
  expect(lengthOrNone(3.048, 'us')).toBe('10.0 ft'); // 0.3048 m a foot
  expect(lengthOrNone(Number.NaN, 'us')).toBe('no number');
  for (const lengthM of [1e25, -1e300, Number.POSITIVE_INFINITY]) {
    expect(lengthOrNone(lengthM, 'metric')).toBe('more than round the earth');
  }
});
