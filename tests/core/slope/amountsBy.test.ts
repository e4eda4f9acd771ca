import { expect, test } from 'vitest';
import { AMOUNTS_BY_WORDS } from '../../../core/slope/index.ts';

test('the two areas amounts may come from are told apart in words', () => {
  expect(new Set(Object.values(AMOUNTS_BY_WORDS)).size).toBe(2); // map and surface
});
