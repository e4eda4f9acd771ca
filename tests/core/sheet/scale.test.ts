import { expect, test } from 'vitest';
import { draftingScales, findFittingScale, fitsAtScale, scaleWords } from '../../../core/sheet/scale.ts';

test('a US scale of 10 feet to the inch is 1:120 and says so', () => {
  expect(draftingScales('us')).toContain(120); // 10 ft × 12 in per ft
  expect(scaleWords(120, 'us')).toBe('1 in = 10 ft (1:120)');
});

test('a metric scale, and a US one of no whole feet, are given as a ratio', () => {
  expect(scaleWords(100, 'metric')).toBe('1:100');
  expect(scaleWords(100, 'us')).toBe('1:100');
});

test('scales run from the largest drawing to the smallest', () => {
  for (const units of ['us', 'metric'] as const) {
    const scales = draftingScales(units);
    expect([...scales].sort((a, b) => a - b)).toEqual(scales);
  }
});

test('the largest drafting scale that fits is taken', () => {
  // 30 m at 1:200 is 150 mm, at 1:125 240 mm: worked by hand
  expect(findFittingScale('metric', 30, 10, 160, 200)).toBe(200);
  expect(fitsAtScale(200, 30, 10, 150, 50)).toBe(true); // exactly 150 by 50 mm
  expect(fitsAtScale(200, 30, 10, 149.9, 50)).toBe(false);
});

test('a height that is too much for the paper counts as the width does', () => {
  expect(findFittingScale('metric', 10, 30, 200, 160)).toBe(200); // as above, turned
});

test('ground larger than any scale holds fits none', () => {
  expect(findFittingScale('metric', 1e6, 1, 200, 200)).toBeUndefined();
});
