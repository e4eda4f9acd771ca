import { expect, test } from 'vitest';
import { LONG_STRIP, MANY_SECTIONS, SMALL_SQUARE, THREE_ZONES } from '../../support/handMadeYards.ts';
import { sheetOf, textsOf } from '../../support/sheetPages.ts';

function overviewWords(ground: Parameters<typeof sheetOf>[0], paper?: 'letter' | 'a4'): string[] {
  return textsOf(sheetOf(ground, paper)[0]?.marks ?? []);
}

test('the overview names every zone and section of the job', () => {
  const words = overviewWords(THREE_ZONES);
  for (const word of ['Back lawn', 'West side', 'Front lawn', 'A1', 'A2', 'A3', 'B1', 'C1'])
    expect(words).toContain(word);
});

test('it says how much there is to treat, in how many loads, in both units', () => {
  expect(overviewWords(SMALL_SQUARE)).toContain('100.0 m² (1,076 ft²) to treat, 1 load, walking 3:39'); // 10 m × 10 m = 100 m² = 1,076.39 ft²
});

test('the loads stand under a map that leaves room, and are left out under one that does not', () => {
  expect(overviewWords(THREE_ZONES)).toContain('product, fl oz');
  expect(overviewWords(MANY_SECTIONS)).not.toContain('product, mL');
});

test('a placed yard has a north, a loose one the north of its plan', () => {
  expect(overviewWords(THREE_ZONES)).toContain('N');
  expect(overviewWords(LONG_STRIP)).toContain('plan N');
});
