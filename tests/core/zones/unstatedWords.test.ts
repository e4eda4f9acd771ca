import { expect, test } from 'vitest';
import { unstatedWords } from '../../../core/zones/index.ts';

const zone = (name: string, sigmaM2: number | null, treatedM2 = 10) => ({ name, sigmaM2, treatedM2 });

test('areas without a ± are named, so that they do not read as exact', () => {
  const zones = [zone('back', null), zone('front', 2), zone('side', null)];
  expect(unstatedWords(zones)).toBe('± not stated for back, side'); // those without a sigma
  expect(unstatedWords([zone('back', null)])).toBe('± not stated for any zone'); // all there are
});

test('nothing is said where every area has its ±, or nothing is left to treat', () => {
  expect(unstatedWords([zone('back', 1), zone('shed', null, 0)])).toBeUndefined();
});
